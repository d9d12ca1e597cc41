// Two values of one thing in one record: two copies of its sheet were filled by two hands, or one was read twice.
import type { Problem } from '../../problem/problem.ts';
import type { Job, Reading, ReadingValue } from '../../records/model.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Namer } from '../names.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

const sides = ['found', 'left'] as const;

interface First {
  readonly value: ReadingValue;
  readonly reading: Reading;
}

/** The same item, position, condition and side read twice, to two values: neither is taken back by the other. */
const inRecords = keptFlat((job: Job, key: Namer): readonly Problem[] => {
  // Nearly every record reads a thing once; the values of one reading differ in their positions.
  if (new Set(job.readings.map(({ item }) => key(item))).size === job.readings.length) return [];
  const first = new Map<string, First>();
  return job.readings.flatMap((reading) =>
    sides.flatMap((side) =>
      reading[side].flatMap((value): readonly Problem[] => {
        const name = [key(reading.item), side, value.position, ...reading.condition.toSorted()].join('|');
        const before = first.get(name);
        if (before === undefined) first.set(name, { value, reading });
        return before === undefined || same(before.value, value) ? [] : [differ(side, before, { value, reading })];
      }),
    ),
  );
});

export const readTwiceDifferently: Look = ({ ground }) => inRecords(ground.jobs, ground.key);

function same(a: ReadingValue, b: ReadingValue): boolean {
  if (a.value.kind !== 'read' || b.value.kind !== 'read') return true;
  return a.value.written.quantity === b.value.written.quantity;
}

function differ(side: 'found' | 'left', before: First, now: First): Problem {
  const said = ({ value, reading }: First): string => {
    const text = value.value.kind === 'read' ? value.value.written.text : '?';
    return reading.by === undefined ? text : `${text} by ${reading.by}`;
  };
  const where = now.value.position === '' ? now.reading.item : `${now.reading.item}, ${now.value.position}`;
  const message = `${where}, as ${side}: ${said(before)} and ${said(now)} in one record`;
  return query(
    'read-twice-differently',
    now.value.at,
    message,
    'read it again, and say in a later record which stands',
  );
}
