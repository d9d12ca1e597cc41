// Where a row of the torque table has its value from: the maker, a computed band for what only holds a cover, or nowhere.
import { describe, expect, it } from 'vitest';
import { inUnit } from '../../src/quantity/quantity.ts';
import { newtonMetre } from '../../src/quantity/units.ts';
import type { Fastener, Job } from '../../src/records/model.ts';
import { book, fastener, job, maker, nowhere, work } from './records.ts';

function rowOf(one: Fastener, jobs: readonly Job[] = []) {
  const [row] = book(jobs, '2026-06-01', { records: { maker: maker({ fasteners: [one] }) } }).torque;
  const ends = [row?.value?.low, row?.value?.high];
  const values = ends.map((end) => end && Math.round(inUnit(end.quantity, newtonMetre) * 10) / 10);
  return { basis: row?.basis, values, note: row?.note, untightened: row?.untightened?.entry.verb };
}

const screw = { thread: 'M6', class: '4.8', into: 'aluminium', threads: 'dry' } as const;
const helped = job('2026-01-02', {
  repairs: [{ of: 'cover-screw', now: 'wire thread insert M6', why: 'stripped', at: nowhere }],
});

describe('a row of the torque table', () => {
  it('has one value or both ends of the maker’s range', () => {
    expect(rowOf(fastener('nut', { torqueText: '24 N·m' })).values).toEqual([24, undefined]);
    expect(rowOf(fastener('nut', { torqueText: '22 to 26 N·m' }))).toMatchObject({ basis: 'maker', values: [22, 26] });
  });
  it('has a computed band only where the fastener is marked as a cover’s, and its hole is as it was made', () => {
    expect(rowOf(fastener('cover-screw', { ...screw, duty: 'cover' }))).toMatchObject({
      basis: 'computed',
      values: [4.3, 5.3],
    });
    expect(rowOf(fastener('cover-screw', screw))).toMatchObject({ basis: 'none', values: [undefined, undefined] });
    expect(rowOf(fastener('cover-screw', { ...screw, duty: 'cover' }), [helped])).toMatchObject({
      basis: 'none',
      values: [undefined, undefined],
    });
  });
  it('keeps the maker’s value for a hole that was repaired, and says that it was for another', () => {
    const row = rowOf(fastener('cover-screw', { torqueText: '8 N·m' }), [helped]);
    expect(row.values).toEqual([8, undefined]);
    expect(row.note).toContain('hole repaired (wire thread insert M6): the value was for the hole as made');
  });
  it.each(['removed', 'loosened', 'opened', 'replaced', 'lost'] as const)('is not tightened once it is %s', (verb) => {
    const off = job('2026-01-02', { work: [work(verb, 'nut')] });
    const on = job('2026-01-03', { work: [work('tightened', 'nut')] });
    expect(rowOf(fastener('nut'), [off]).untightened).toBe(verb);
    expect(rowOf(fastener('nut'), [off, on]).untightened).toBeUndefined();
  });
});
