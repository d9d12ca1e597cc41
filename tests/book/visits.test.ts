// Services that fall near each other are done together, and a left-over screw finds its place.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likelyPlaces } from '../../src/book/left-over.ts';
import type { ServiceLine } from '../../src/records/model.ts';
import { book, fastener, interval, job, maker, quantity, service, work } from './records.ts';

const visits = (lines: readonly ServiceLine[], today = '2026-03-01') =>
  book([job('2026-01-01', { services: lines.map((line) => line.id) })], today, {
    records: { maker: maker({ services: lines }) },
  }).visits?.map((one) => [one.day, one.lines.map((line) => line.service.id)]);
const every = (id: string, months: number, grace = 0): ServiceLine =>
  service(id, { every: interval(`${String(months)} months`), grace });

describe('visits', () => {
  it('put a service with grace off until the next, and no further than its grace', () => {
    expect(visits([every('filter', 10, 0.09), every('fluid', 11)])).toEqual([
      ['2026-11-01', ['filter']],
      ['2026-12-01', ['fluid']],
    ]);
    expect(visits([every('filter', 10, 0.1), every('fluid', 11)])).toEqual([['2026-12-01', ['filter', 'fluid']]]);
  });
  it('never put off brakes, tyres or oil', () => {
    expect(visits([every('brake-fluid', 10, 0.5), every('plug', 11)])).toEqual([
      ['2026-11-01', ['brake-fluid']],
      ['2026-12-01', ['plug']],
    ]);
  });
  it('put what presses together today', () => {
    expect(visits([every('a', 1), every('b', 2), every('c', 12)], '2026-03-05')).toEqual([
      ['2026-03-05', ['a', 'b']],
      ['2027-01-01', ['c']],
    ]);
  });
  it('hold every line once, none before its day and none after its grace', () => {
    const lines = fc.array(
      fc.record({ months: fc.integer({ min: 3, max: 40 }), grace: fc.double({ min: 0, max: 0.3, noNaN: true }) }),
      { maxLength: 20 },
    );
    fc.assert(
      fc.property(lines, (list) => {
        const made = book(
          [job('2026-01-01', { services: list.map((_one, index) => `s${String(index)}`) })],
          '2026-01-02',
          {
            records: {
              maker: maker({ services: list.map((one, index) => every(`s${String(index)}`, one.months, one.grace)) }),
            },
          },
        );
        const seen = (made.visits ?? []).flatMap((one) => one.lines.map((line) => ({ day: one.day, line })));
        expect(seen.map(({ line }) => line.service.id).toSorted()).toEqual(
          made.due.map((line) => line.service.id).toSorted(),
        );
        for (const { day, line } of seen) {
          const due = line.dueDay ?? day;
          const allowed = (Date.parse(due) - Date.parse('2026-01-01')) * line.service.grace;
          expect(day >= due && Date.parse(day) - Date.parse(due) <= allowed + 1).toBe(true);
        }
      }),
    );
  });
});

describe('a screw left over', () => {
  const data = maker({
    fasteners: [
      fastener('clutch-cover-screw', {
        name: 'Clutch cover screws',
        thread: 'M6x1.0',
        lengths: [
          { length: quantity('25 mm', 'length'), count: 5 },
          { length: quantity('45 mm', 'length'), count: 4 },
        ],
      }),
      fastener('kickstart-screw', { thread: 'M6 × 1', length: quantity('25 mm', 'length') }),
      fastener('side-panel-screw', { thread: 'M6', length: quantity('16 mm', 'length') }),
      fastener('stud', { thread: 'M8x1.25', length: quantity('25 mm', 'length') }),
    ],
  });
  const off = (thing: string, id: string, count: number) => work('removed', thing, { fasteners: [{ id, count }] });
  const strip = job('2026-01-01', {
    work: [
      off('clutch cover', 'clutch-cover-screw', 9),
      off('kickstart cover', 'kickstart-screw', 3),
      off('side panel', 'side-panel-screw', 2),
      off('head', 'stud', 4),
    ],
  });
  const back = job('2026-02-01', {
    work: [work('refitted', 'clutch cover', { fasteners: [{ id: 'clutch-cover-screw', count: 8 }] })],
  });
  it('goes first to where thread, length and count fit, with the reasons', () => {
    const places = likelyPlaces(book([strip, back], '2026-03-01', { records: { maker: data } }), {
      thread: 'M6',
      length: quantity('25 mm', 'length').quantity,
      count: 1,
    });
    expect(places.map((one) => [one.fastener.id, one.missing])).toEqual([
      ['clutch-cover-screw', 1],
      ['kickstart-screw', 3],
    ]);
    expect(places[0]?.because).toEqual([
      'same thread',
      'same length',
      'as many are missing',
      'fewer went back than came off',
    ]);
  });
});
