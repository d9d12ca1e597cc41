// Which readings still hold after the work that came since, and which have to be taken again.
import { expect, it } from 'vitest';
import { readingsSince } from '../../src/book/readings-since.ts';
import type { Job } from '../../src/records/model.ts';
import { book, content, job, limit, maker, procedure, reading, setting, work } from './records.ts';

const data = maker({
  limits: [limit('bore', '50.00 to 50.02 mm', '50.10 mm max', { of: 'barrels' })],
  settings: [setting('points-gap', '0.35 mm', { disturbs: ['ignition-timing'] }), setting('ignition-timing', '2.1 mm')],
});
const words = content({ procedureList: [procedure('service', { disturbs: ['points-gap'] })] });

function told(...jobs: readonly Job[]): readonly string[] {
  return readingsSince(book(jobs, '2026-06-01', { content: words, records: { maker: data } })).map(
    ({ series, undone }) => `${series.item}: ${undone?.what ?? 'holds'}`,
  );
}
const timed = job('2026-01-01', { readings: [reading('ignition-timing', { left: '2.1 mm' })] });

it('holds until what it hangs on is set, and not for unlike work', () => {
  expect(told(timed)).toEqual(['ignition-timing: holds']);
  expect(told(timed, job('2026-02-01', { work: [work('removed', 'seat')] }))).toEqual(['ignition-timing: holds']);
  const set = job('2026-02-01', { readings: [reading('points-gap', { found: '0.30 mm', left: '0.35 mm' })] });
  expect(told(timed, set)).toEqual(['points-gap: holds', 'ignition-timing: points-gap set']);
  const looked = job('2026-02-01', { readings: [reading('points-gap', { found: '0.35 mm' })] });
  expect(told(timed, looked)).toEqual(['points-gap: holds', 'ignition-timing: holds']);
});

it('is undone by a procedure of another record, not by the one it was found in', () => {
  const gap = job('2026-01-05', { procedures: ['service'], readings: [reading('points-gap', { found: '0.35 mm' })] });
  expect(told(gap)).toEqual(['points-gap: holds']);
  expect(told(gap, job('2026-03-01', { procedures: ['service'] }))[0]).toMatch(/^points-gap: (?!holds)/u);
});

it('is undone by work of its own record on the very thing, unless it was left after it', () => {
  const timingMoved = { work: [work('loosened', 'ignition timing')] };
  const found = job('2026-01-05', { ...timingMoved, readings: [reading('ignition-timing', { found: '1.9 mm' })] });
  expect(told(found)).toEqual(['ignition-timing: ignition timing loosened']);
  const left = job('2026-01-05', { ...timingMoved, readings: [reading('ignition-timing', { left: '2.1 mm' })] });
  expect(told(left)).toEqual(['ignition-timing: holds']);
});

it('begins again with a new part', () => {
  const worn = job('2026-01-05', { readings: [reading('bore', { found: '50.09 mm' })] });
  const bored = job('2026-02-05', { work: [work('replaced', 'barrels')] });
  expect(told(worn, bored)).toEqual(['bore: barrels fitted']);
});
