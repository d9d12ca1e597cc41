// A series while it grows: readings are added in order, each with the measure in force, and corrected in place.
import type { Figure } from '../figure/figure.ts';
import type { Day } from '../quantity/day.ts';
import type { Job, Limit, Reading, ReadingValue, Repair } from '../records/model.ts';
import type { Series, SeriesPoint } from './book.ts';
import type { Draft, Slot } from './corrections.ts';
import type { Ground } from './ground.ts';
import { unlikeTo } from './unlike.ts';
import type { Measure } from './verdict.ts';
import { measureOf, verdictOf } from './verdict.ts';

export interface Growing {
  /** Key of the item. */
  readonly key: string;
  readonly item: string;
  readonly name: string;
  readonly slots: Slot[];
  readonly basis: { readonly from: Day; readonly what: string }[];
  /** Slots of records that some later record corrects; others are never looked up. */
  readonly ofRecord: Map<string, Slot[]>;
  limit: Limit | undefined;
  measure: Measure | undefined;
}

/** An empty series of an item, under its name in the maker's data or the owner's own. */
export function begin(key: string, written: string, ground: Ground): Growing {
  const limit = ground.limits.get(key);
  const setting = ground.settings.get(key);
  const named = limit ?? setting;
  const measure = measureOf(limit, setting);
  const item = named?.id ?? written;
  return { key, item, name: named?.name ?? written, slots: [], basis: [], ofRecord: new Map(), limit, measure };
}

/** The limit entry as a repair leaves it: its own standard and limit where it states them. */
function afterRepair(limit: Limit, repair: Repair): Limit {
  if (repair.standard === undefined && repair.limit === undefined) return limit;
  const { standard: _old, limit: _past, ...rest } = limit;
  const { standard, limit: bound } = repair;
  return { ...rest, ...(standard === undefined ? {} : { standard }), ...(bound === undefined ? {} : { limit: bound }) };
}

/** The part was renewed: what follows is judged anew, and by the repair's own limits. */
export function renew(one: Growing, day: Day, what: string, repair: Repair | undefined, ground: Ground): void {
  one.basis.push({ from: day, what });
  if (one.limit === undefined || repair === undefined) return;
  one.limit = afterRepair(one.limit, repair);
  one.measure = measureOf(one.limit, ground.settings.get(one.key));
}

function draft(
  job: Job,
  reading: Reading,
  side: 'found' | 'left',
  value: ReadingValue,
  distance: Figure<'distance ridden'> | undefined,
): Draft {
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

/** Adds one side of a reading. */
export function add(
  one: Growing,
  job: Job,
  reading: Reading,
  side: 'found' | 'left',
  distance: Figure<'distance ridden'> | undefined,
  correctable: boolean,
): void {
  for (const value of reading[side]) {
    const slot: Slot = { live: draft(job, reading, side, value, distance), measure: one.measure };
    one.slots.push(slot);
    if (!correctable) continue;
    const own = one.ofRecord.get(job.id);
    if (own === undefined) one.ofRecord.set(job.id, [slot]);
    else own.push(slot);
  }
}

/** The finished series, every counting point with its verdict; a limit says nothing of a reading in a condition against its own. */
export function finish(one: Growing, ground: Ground): Series {
  const unlike = unlikeTo(one.limit?.condition ?? ground.settings.get(one.key)?.condition ?? []);
  for (const { live, measure } of one.slots) {
    const instrument = live.instrument === undefined ? undefined : ground.instruments.get(ground.key(live.instrument));
    const other = measure !== undefined && unlike(live.condition);
    const verdict =
      other && live.value.kind === 'read'
        ? 'limit is for another condition'
        : verdictOf(live.value, measure, instrument);
    if (verdict !== undefined) live.verdict = verdict;
  }
  const setting = ground.settings.get(one.key);
  const points: SeriesPoint[] = [];
  for (const slot of one.slots) {
    if (slot.struck !== undefined) points.push(...slot.struck);
    points.push(slot.live);
  }
  const { item, name, limit, basis } = one;
  return {
    item,
    name,
    ...(limit === undefined ? {} : { limit }),
    ...(setting === undefined ? {} : { setting }),
    basis,
    points,
  };
}
