// A series while it grows: readings are added in order, each with the measure in force, and corrected in place.
import type { Day } from '../quantity/day.ts';
import { isAlike } from '../records/alike.ts';
import { keptWith } from '../records/kept-with.ts';
import type { Job, Limit, Repair } from '../records/model.ts';
import type { Series, SeriesPoint } from './book.ts';
import type { Slot } from './corrections.ts';
import { judge, type Draft, type Judging } from './points-of-record.ts';
import { measureOf, type Measure } from './verdict.ts';

/** An item as its first reading names it, and what it is measured by as long as no repair has changed that. */
export interface Measured {
  /** Key of the item. */
  readonly key: string;
  readonly written: string;
  readonly measure: Measure | undefined;
}

export interface Growing {
  /** Key of the item. */
  readonly key: string;
  readonly item: string;
  readonly name: string;
  /** Those of records that no later record corrects are finished. */
  readonly points: (SeriesPoint | Slot)[];
  readonly basis: { readonly from: Day; readonly what: string }[];
  /** Slots of records that some later record corrects; others are never looked up. */
  readonly ofRecord: Map<string, Slot[]>;
  limit: Limit | undefined;
  measure: Measure | undefined;
}

export function measuredBy(key: string, written: string, { limits, settings }: Judging): Measured {
  return { key, written, measure: measureOf(limits.get(key), settings.get(key)) };
}

/** An empty series of an item, under its name in the maker's data or the owner's own. */
export function begin(key: string, written: string, judging: Judging): Growing {
  const limit = judging.limits.get(key);
  const named = limit ?? judging.settings.get(key);
  const { measure } = measuredBy(key, written, judging);
  const item = named?.id ?? written;
  return { key, item, name: named?.name ?? written, points: [], basis: [], ofRecord: new Map(), limit, measure };
}

/** The limit entry as a repair leaves it: its own standard and limit where it states them. The same for the same repair of it. */
const afterRepair = keptWith((repair: Repair, limit: Limit): Limit => {
  if (repair.standard === undefined && repair.limit === undefined) return limit;
  const { standard: _old, limit: _past, ...rest } = limit;
  const { standard, limit: bound } = repair;
  return { ...rest, ...(standard === undefined ? {} : { standard }), ...(bound === undefined ? {} : { limit: bound }) };
});

/** The part was renewed: what follows is judged anew, and by the repair's own limits. */
export function renew(one: Growing, day: Day, what: string, repair: Repair | undefined, ground: Judging): void {
  one.basis.push({ from: day, what });
  if (one.limit === undefined || repair === undefined) return;
  one.limit = afterRepair(repair, one.limit);
  one.measure = measureOf(one.limit, ground.settings.get(one.key));
}

/** Adds one side of a reading. */
export function add(one: { readonly points: (SeriesPoint | Slot)[] }, points: readonly SeriesPoint[]): void {
  for (const point of points) one.points.push(point);
}

/** Adds one side of a reading of a record that some later record corrects: its points are judged at the end. */
export function addOpen(one: Growing, job: Job, drafts: readonly Draft[]): void {
  for (const live of drafts) {
    const slot: Slot = { live, measure: one.measure };
    one.points.push(slot);
    const own = one.ofRecord.get(job.id);
    if (own === undefined) one.ofRecord.set(job.id, [slot]);
    else own.push(slot);
  }
}

/** The finished series, every counting point with its verdict. */
export function finish(one: Growing, judging: Judging): Series {
  const setting = judging.settings.get(one.key);
  const points: SeriesPoint[] = [];
  for (const point of one.points) {
    if (!('live' in point)) {
      points.push(point);
      continue;
    }
    judge(point.live, one.key, point.measure, judging);
    points.push(...(point.struck ?? []), point.live);
  }
  const { item, name, limit, basis } = one;
  const made: Series = {
    item,
    name,
    ...(limit === undefined ? {} : { limit }),
    ...(setting === undefined ? {} : { setting }),
    basis,
    points,
  };
  return keptSeries(made, one.key, judging);
}

/** The series of each item as it was last. */
const last = keptWith((_judging: Judging) => new Map<string, Series>());

/** The very series of before where it says the same, so that what follows from it alone is kept with it. */
function keptSeries(made: Series, key: string, judging: Judging): Series {
  const known = last(judging);
  const before = known.get(key);
  const same =
    before !== undefined &&
    before.limit === made.limit &&
    before.name === made.name &&
    before.item === made.item &&
    isAlike(before.basis, made.basis) &&
    before.points.length === made.points.length &&
    before.points.every((point, index) => point === made.points[index]);
  if (same) return before;
  known.set(key, made);
  return made;
}
