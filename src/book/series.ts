// Readings of one item over time, each judged by the limit in force on its day; corrections applied, renewals marked.
import type { Job, Limit } from '../records/model.ts';
import { itemsByPart, renewals } from './basis.ts';
import type { Series } from './book.ts';
import type { CorrectionDone } from './corrections.ts';
import { correct } from './corrections.ts';
import type { Ground } from './ground.ts';
import type { Growing } from './growing-series.ts';
import { add, begin, finish, renew } from './growing-series.ts';
import type { OdometerWork } from './odometer.ts';

export interface SeriesWork {
  readonly series: readonly Series[];
  /** By key of the item. */
  readonly byItem: ReadonlyMap<string, Series>;
  readonly corrections: readonly CorrectionDone[];
  /** Limits after repairs, by key. */
  readonly limits: ReadonlyMap<string, Limit>;
}

/** All series while they grow, by key of the item. */
type Garden = (key: string, written: string) => Growing;

/** One record: found before its work, renewals, then what was left; a repair judges only what was left. */
function addRecord(
  job: Job,
  garden: Garden,
  ground: Ground,
  odometer: OdometerWork,
  renewed: ReturnType<typeof renewals>,
  correctable: boolean,
): void {
  const own = job.readings.length === 0 ? undefined : odometer.readingOf(job.id)?.machine;
  const distance = own ?? (job.readings.length === 0 ? undefined : odometer.odometer.machineAt(job.date.from));
  const growing = job.readings.map((reading) => ({ reading, one: garden(ground.key(reading.item), reading.item) }));
  for (const { one, reading } of growing) add(one, job, reading, 'found', distance, correctable);
  for (const one of renewed) renew(garden(one.item, one.item), job.date.from, one.what, one.repair, ground);
  for (const { one, reading } of growing) add(one, job, reading, 'left', distance, correctable);
}

/** Reads all series off the records in order; linear in the readings. */
export function readingSeries(ground: Ground, odometer: OdometerWork): SeriesWork {
  const growing = new Map<string, Growing>();
  const garden: Garden = (key, written) => {
    const known = growing.get(key);
    if (known !== undefined) return known;
    const fresh = begin(key, written, ground);
    growing.set(key, fresh);
    return fresh;
  };
  const corrected = new Set(ground.jobs.flatMap((job) => job.corrections.map((one) => one.record)));
  const byPart = itemsByPart(ground.limits, ground.key);
  const corrections: CorrectionDone[] = [];
  for (const job of ground.jobs) {
    addRecord(job, garden, ground, odometer, renewals(job, ground, byPart), corrected.has(job.id));
    for (const correction of job.corrections) {
      const item = ground.key(correction.item);
      if (item === 'odometer') continue;
      corrections.push(correct(growing.get(item)?.ofRecord.get(correction.record) ?? [], correction, job));
    }
  }
  const read = [...growing.values()].filter((one) => one.slots.length > 0);
  const byItem = new Map(read.map((one) => [one.key, finish(one, ground)]));
  const limits = new Map(ground.limits);
  for (const one of growing.values()) if (one.limit !== undefined) limits.set(one.key, one.limit);
  return { series: inMakersOrder(byItem, ground), byItem, corrections, limits };
}

/** Limits as the book lists them, then settings, then what the owner named, by first reading. */
function inMakersOrder(byItem: ReadonlyMap<string, Series>, ground: Ground): readonly Series[] {
  const places = new Map([...ground.limits.keys(), ...ground.settings.keys()].map((item, index) => [item, index]));
  const place = (item: string): number => places.get(item) ?? places.size;
  return [...byItem].toSorted((a, b) => place(a[0]) - place(b[0])).map(([, series]) => series);
}
