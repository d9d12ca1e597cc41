// Every reading of the odometer in order: what the records say, and what the instrument periods say at their ends.
import type { Place } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import { inUnit } from '../quantity/quantity.ts';
import type { Written } from '../quantity/quantity.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import type { InstrumentPeriod, Job } from '../records/model.ts';
import { keptFlat } from '../records/runs.ts';
import type { Ground } from './ground.ts';

export interface ClockReading {
  readonly day: Day;
  /** Id of the record. */
  readonly job?: string;
  readonly reads: Written<'distance ridden'>;
  readonly at: Place;
}

/** A later record may correct an earlier record's odometer, under the item `odometer`. */
const correctedOdometers = keptFlat(({ corrections }: Job) =>
  corrections.flatMap(({ item, record, is }) => {
    const read = item === 'odometer' ? readQuantity(is, 'distance ridden') : undefined;
    return read?.ok === true ? [[record, read.value] as const] : [];
  }),
);

const placeOf = ({ file }: Job, ...path: string[]): Place => ({ file, path });

/** Out, reading of the record, in: each once, upwards, as they were passed. */
function ofJob(job: Job, odometer: Written<'distance ridden'> | undefined): readonly ClockReading[] {
  const day = job.date.from;
  const { id } = job;
  const { out, in: back } = job.ride ?? {};
  const found: ClockReading[] = [];
  if (out !== undefined) found.push({ day, job: id, reads: out, at: placeOf(job, 'ride', 'out') });
  if (odometer !== undefined && odometer.quantity !== out?.quantity && odometer.quantity !== back?.quantity) {
    found.push({ day, job: id, reads: odometer, at: placeOf(job, 'odometer') });
  }
  if (back !== undefined && back.quantity !== out?.quantity)
    found.push({ day, job: id, reads: back, at: placeOf(job, 'ride', 'in') });
  if (found.length === 0 && odometer !== undefined)
    found.push({ day, job: id, reads: odometer, at: placeOf(job, 'odometer') });
  return found;
}

const asWritten = keptFlat((job: Job) => ofJob(job, job.odometer));

/** The readings of all records that have happened, in their order. */
export function clockReadings(ground: Ground): readonly ClockReading[] {
  const right = new Map(correctedOdometers(ground.jobs));
  if (right.size === 0) return asWritten(ground.jobs);
  return ground.jobs.flatMap((job) => ofJob(job, right.get(job.id) ?? job.odometer));
}

/** How far a reading lies from the period's own ends, in its unit: tells which clock was read on the day they were changed. */
function distanceFrom(period: InstrumentPeriod, reading: ClockReading): number {
  const ends = [period.from.reads, period.to?.reads].filter((end) => end !== undefined);
  const reads = inUnit(reading.reads.quantity, period.unit);
  if (ends.length === 0) return Number.POSITIVE_INFINITY;
  return Math.min(...ends.map((end) => Math.abs(inUnit(end.quantity, period.unit) - reads)));
}

function covers(period: InstrumentPeriod, day: Day): boolean {
  return period.from.day <= day && (period.to === undefined || day <= period.to.day);
}

/** Readings by the period they were taken in; a reading outside every period belongs to none. */
export function byPeriod(
  periods: readonly InstrumentPeriod[],
  readings: readonly ClockReading[],
): ReadonlyMap<InstrumentPeriod, readonly ClockReading[]> {
  const found = new Map<InstrumentPeriod, ClockReading[]>(periods.map((period) => [period, []]));
  const [sole] = periods;
  // One clock since it was new, and nothing to choose between.
  if (sole !== undefined && periods.length === 1)
    return new Map([[sole, readings.filter((one) => covers(sole, one.day))]]);
  for (const reading of readings) {
    const [first, ...others] = periods.filter((period) => covers(period, reading.day));
    if (first === undefined) continue;
    const nearest = others.reduce(
      (best, one) => (distanceFrom(one, reading) < distanceFrom(best, reading) ? one : best),
      first,
    );
    found.get(nearest)?.push(reading);
  }
  return found;
}
