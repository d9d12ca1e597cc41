// The points that one record gives to series, each judged by the measure in force; kept for as long as record, measures and distance are the same.
import type { Figure } from '../figure/figure.ts';
import { keptWith } from '../records/kept-with.ts';
import type { Job, Reading, ReadingValue } from '../records/model.ts';
import type { SeriesPoint } from './book.ts';
import type { Ground } from './ground.ts';
import { unlikeTo } from './unlike.ts';
import { verdictOf, type Measure } from './verdict.ts';

export type Side = 'found' | 'left';
type Distance = Figure<'distance ridden'> | undefined;

/** A point that is still being made. */
export type Draft = { -readonly [K in keyof SeriesPoint]: SeriesPoint[K] };

/** What readings are judged by besides the measure in force: the very same object while none of it changes. */
export type Judging = Pick<Ground, 'limits' | 'settings' | 'instruments' | 'key'>;

const judgingWith = keptWith(
  (
    limits: Judging['limits'],
    settings: Judging['settings'],
    instruments: Judging['instruments'],
    key: Judging['key'],
  ): Judging => ({ limits, settings, instruments, key }),
);

export function judgingOf({ limits, settings, instruments, key }: Judging): Judging {
  return judgingWith(limits, settings, instruments, key);
}

/** Whether a reading of the item in these conditions is against the condition of its limit or setting. */
const unlikeFor = keptWith((judging: Judging) => {
  const known = new Map<string, (had: readonly string[]) => boolean>();
  return (item: string): ((had: readonly string[]) => boolean) => {
    const before = known.get(item);
    if (before !== undefined) return before;
    const wanted = judging.limits.get(item)?.condition ?? judging.settings.get(item)?.condition ?? [];
    const made = unlikeTo(wanted);
    known.set(item, made);
    return made;
  };
});

/** Gives a point its verdict; a limit says nothing of a reading in a condition against its own. */
export function judge(point: Draft, item: string, measure: Measure | undefined, judging: Judging): void {
  const { instruments, key } = judging;
  const instrument = point.instrument === undefined ? undefined : instruments.get(key(point.instrument));
  const other = measure !== undefined && point.value.kind === 'read' && unlikeFor(judging)(item)(point.condition);
  const verdict = other ? 'limit is for another condition' : verdictOf(point.value, measure, instrument);
  if (verdict !== undefined) point.verdict = verdict;
}

/** The points of one side of a reading, without their verdicts. */
export function draftsOf(job: Job, reading: Reading, side: Side, distance: Distance): readonly Draft[] {
  return reading[side].map((value) => draft(job, reading, side, value, distance));
}

function draft(job: Job, reading: Reading, side: Side, value: ReadingValue, distance: Distance): Draft {
  const made: Draft = {
    day: job.date.from,
    job,
    side,
    position: value.position,
    value: value.value,
    condition: reading.condition,
    at: value.at,
  };
  if (reading.instrument !== undefined) made.instrument = reading.instrument;
  if (distance !== undefined) made.machineDistance = distance;
  return made;
}

interface Judged {
  readonly measure: Measure | undefined;
  readonly points: readonly SeriesPoint[];
}

/** What a record gave, with all that it was made from besides the measures. */
export interface Given {
  readonly judging: Judging;
  readonly distance: Distance;
  /** Found and left of each reading, in their order. */
  readonly sides: (Judged | undefined)[];
}

const known = new WeakMap<Job, Given>();

/** What the record gave before; nothing yet where what its points are made of has changed since. */
export function givenBy(job: Job, judging: Judging, distance: Distance): Given {
  const before = known.get(job);
  if (before !== undefined && before.judging === judging && before.distance === distance) return before;
  const made = { judging, distance, sides: [] };
  known.set(job, made);
  return made;
}

/** A reading, its place in its record, and the key of its item. */
export interface Read {
  readonly reading: Reading;
  readonly index: number;
  readonly item: string;
}

export function readsOf({ readings }: Job, key: Judging['key']): readonly Read[] {
  return readings.map((reading, index) => ({ reading, index, item: key(reading.item) }));
}

/** The points of one side of a reading under the measure in force. */
export function pointsOf(
  given: Given,
  job: Job,
  { reading, index, item }: Read,
  side: Side,
  measure: Measure | undefined,
): readonly SeriesPoint[] {
  const place = 2 * index + (side === 'left' ? 1 : 0);
  const before = given.sides[place];
  if (before !== undefined && before.measure === measure) return before.points;
  const points = draftsOf(job, reading, side, given.distance);
  for (const point of points) judge(point, item, measure, given.judging);
  given.sides[place] = { measure, points };
  return points;
}
