// Readings of one item over time, each judged by the limit in force on its day; corrections applied, renewals marked.
import type { Figure } from '../figure/figure.ts';
import type { Day } from '../quantity/day.ts';
import type { Job, Limit, Reading, Repair } from '../records/model.ts';
import { itemsByPart, renewals } from './basis.ts';
import type { Series, SeriesPoint } from './book.ts';
import type { CorrectionDone, Slot } from './corrections.ts';
import { correct } from './corrections.ts';
import type { Ground } from './ground.ts';
import type { OdometerWork } from './odometer.ts';
import { measureOf, verdictOf } from './verdict.ts';

export interface SeriesWork {
  readonly series: readonly Series[];
  /** By key of the item. */
  readonly byItem: ReadonlyMap<string, Series>;
  readonly corrections: readonly CorrectionDone[];
  /** Limits after repairs, by key. */
  readonly limits: ReadonlyMap<string, Limit>;
}

interface Growing {
  readonly item: string;
  readonly name: string;
  readonly slots: Slot[];
  readonly basis: { readonly from: Day; readonly what: string }[];
  readonly ofRecord: Map<string, Slot[]>;
}

/** The limit entry as a repair leaves it: its own standard and limit where it states them. */
function afterRepair(limit: Limit, repair: Repair): Limit {
  if (repair.standard === undefined && repair.limit === undefined) return limit;
  const { standard: _old, limit: _past, ...rest } = limit;
  const { standard, limit: bound } = repair;
  return { ...rest, ...(standard === undefined ? {} : { standard }), ...(bound === undefined ? {} : { limit: bound }) };
}

/** Distance of the machine at a record, made once for all its readings: its own reading, else between its neighbours. */
function distanceOf(job: Job, odometer: OdometerWork): Figure<'distance ridden'> | undefined {
  return odometer.readingOf(job.id)?.machine ?? odometer.odometer.machineAt(job.date.from);
}

function pointsOf(job: Job, reading: Reading, distance: Figure<'distance ridden'> | undefined): readonly SeriesPoint[] {
  const common = {
    day: job.date.from,
    job,
    condition: reading.condition,
    ...(reading.instrument === undefined ? {} : { instrument: reading.instrument }),
    ...(distance === undefined ? {} : { machineDistance: distance }),
  };
  const found = reading.found.map((one) => ({
    ...common,
    side: 'found' as const,
    position: one.position,
    value: one.value,
    at: one.at,
  }));
  const left = reading.left.map((one) => ({
    ...common,
    side: 'left' as const,
    position: one.position,
    value: one.value,
    at: one.at,
  }));
  return [...found, ...left];
}

/** Found before the work of its record, left after it: a repair of the same record judges only what was left. */
function judged(point: SeriesPoint, ground: Ground, item: string, limit: Limit | undefined): SeriesPoint {
  const { verdict: _old, ...rest } = point;
  const instrument = point.instrument === undefined ? undefined : ground.instruments.get(ground.key(point.instrument));
  const verdict = verdictOf(point.value, measureOf(limit, ground.settings.get(item)), instrument);
  return verdict === undefined ? rest : { ...rest, verdict };
}

/** Reads all series off the records in order; linear in the readings. */
export function readingSeries(ground: Ground, odometer: OdometerWork): SeriesWork {
  const growing = new Map<string, Growing>();
  const limits = new Map(ground.limits);
  const limitAt = new Map<Slot, Limit | undefined>();
  const corrections: CorrectionDone[] = [];
  const byPart = itemsByPart(ground.limits, ground.key);
  const seriesOf = (item: string, written: string): Growing => {
    const known = growing.get(item);
    if (known !== undefined) return known;
    const named = ground.limits.get(item) ?? ground.settings.get(item);
    const fresh = {
      item: named?.id ?? written,
      name: named?.name ?? written,
      slots: [],
      basis: [],
      ofRecord: new Map(),
    };
    growing.set(item, fresh);
    return fresh;
  };
  const add = (item: string, point: SeriesPoint): void => {
    const one = seriesOf(item, item);
    const slot: Slot = { struck: [], live: point };
    limitAt.set(slot, limits.get(item));
    one.slots.push(slot);
    const own = one.ofRecord.get(point.job.id) ?? [];
    own.push(slot);
    one.ofRecord.set(point.job.id, own);
  };
  for (const job of ground.jobs) {
    const distance = job.readings.length === 0 ? undefined : distanceOf(job, odometer);
    const sides = job.readings.map((reading) => {
      const item = ground.key(reading.item);
      seriesOf(item, reading.item);
      return { item, points: pointsOf(job, reading, distance) };
    });
    for (const { item, points } of sides) for (const point of points) if (point.side === 'found') add(item, point);
    for (const one of renewals(job, ground, byPart)) {
      const known = ground.limits.get(one.item);
      if (known !== undefined || growing.has(one.item))
        seriesOf(one.item, one.item).basis.push({ from: job.date.from, what: one.what });
      const now = limits.get(one.item);
      if (now !== undefined && one.repair !== undefined) limits.set(one.item, afterRepair(now, one.repair));
    }
    for (const { item, points } of sides) for (const point of points) if (point.side === 'left') add(item, point);
    for (const correction of job.corrections) {
      const item = ground.key(correction.item);
      if (item === 'odometer') continue;
      corrections.push(correct(growing.get(item)?.ofRecord.get(correction.record) ?? [], correction, job));
    }
  }
  const made = [...growing].map(([item, one]): readonly [string, Series] => {
    const points = one.slots.flatMap((slot) => [...slot.struck, judged(slot.live, ground, item, limitAt.get(slot))]);
    const limit = limits.get(item);
    const setting = ground.settings.get(item);
    const rest = { ...(limit === undefined ? {} : { limit }), ...(setting === undefined ? {} : { setting }) };
    return [item, { item: one.item, name: one.name, ...rest, basis: one.basis, points }];
  });
  const withPoints = made.filter(([, series]) => series.points.length > 0);
  const byItem = new Map(withPoints);
  return { series: inMakersOrder(withPoints, ground), byItem, corrections, limits };
}

/** Limits as the book lists them, then settings, then what the owner named, by first reading. */
function inMakersOrder(made: readonly (readonly [string, Series])[], ground: Ground): readonly Series[] {
  const places = new Map([...ground.limits.keys(), ...ground.settings.keys()].map((item, index) => [item, index]));
  const place = (item: string): number => places.get(item) ?? places.size;
  return made.toSorted((a, b) => place(a[0]) - place(b[0])).map(([, series]) => series);
}
