// Torque, stages and counts as written, against the book's own.
import { describe, expect, it } from 'vitest';
import { book, fastener, job, maker, quantity, work } from './records.ts';

const nut = fastener('head-nut', {
  torqueText: '10 lbf·ft',
  count: 4,
  stages: [quantity('7 lbf·ft', 'torque'), quantity('10 lbf·ft', 'torque')],
});
const tightened = (to: string) => work('tightened', 'head-nut', { torque: quantity(to, 'torque') });
const queries = (lines: ReturnType<typeof work>[], fasteners = [nut], repaired = false) =>
  book(
    [
      job('2026-04-18', {
        work: lines,
        repairs: repaired
          ? [{ of: 'head-nut', now: 'wire thread insert', why: 'stripped', at: lines[0]?.at ?? nut.at }]
          : [],
      }),
    ],
    '2026-06-01',
    { records: { maker: maker({ fasteners }) } },
  ).queries;
const codes = (...given: Parameters<typeof queries>): readonly string[] => queries(...given).map((one) => one.code);
const said = (lines: ReturnType<typeof work>[]): readonly string[] =>
  queries(lines).map((one) => one.message.replaceAll(/[\u00a0\u202f]/gu, ' '));

describe('against the book', () => {
  it.each(['11.5 lbf·ft', '8 lbf·ft', '7 lbf·ft'])('%s is asked about', (to) => {
    expect(codes([tightened(to)])).toContain('torque-against-book');
  });
  it.each(['10 lbf·ft', '13.6 N·m', '10.3 lbf·ft'])('%s is the book’s', (to) => {
    expect(codes([tightened(to)])).not.toContain('torque-against-book');
  });
  it('a stage on the way is none, and a repaired hole has its own value', () => {
    expect(codes([tightened('7 lbf·ft'), tightened('10 lbf·ft')])).not.toContain('torque-against-book');
    expect(codes([tightened('8 lbf·ft')], [nut], true)).not.toContain('torque-against-book');
  });
  it('another unit is asked about as that, once', () => {
    expect(codes([tightened('10 N·m')]).filter((code) => code.startsWith('torque'))).toEqual(['torque-unit-slip']);
  });
  it('ten times is a point, and not the 9.81 that comes near it', () => {
    expect(said([tightened('100 lbf·ft')])).toContain(
      'head-nut tightened to 100 lbf·ft, the book has 10 lbf·ft: a point slipped by one place?',
    );
  });
  it('the last stage is the torque', () => {
    const wrong = fastener('head-nut', { torqueText: '10 lbf·ft', stages: [quantity('12 lbf·ft', 'torque')] });
    expect(codes([], [wrong])).toContain('stages-against-torque');
    expect(codes([])).not.toContain('stages-against-torque');
  });
  it('no more come off than there are', () => {
    const off = (count: number) => work('removed', 'cylinder head', { fasteners: [{ id: 'head-nut', count }] });
    expect(codes([off(5)])).toContain('more-fasteners-than-book');
    expect(codes([off(4)])).not.toContain('more-fasteners-than-book');
  });
});
