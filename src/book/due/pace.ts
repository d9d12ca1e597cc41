// The rider's own pace, from the months the machine was in use; and when a distance will be reached at it, as a span.
import type { Day } from '../../quantity/day.ts';
import { addDays, addMonths, dayNumber } from '../../quantity/day-arithmetic.ts';
import type { Job } from '../../records/model.ts';
import type { DueLine } from '../book.ts';
import type { OdometerWork } from '../odometer.ts';

/** Metres a day: a quarter of the months in use were slower than `slow`, a quarter faster than `fast`. */
export interface Pace {
  readonly slow: number;
  readonly likely: number;
  readonly fast: number;
}

/** Months looked back over: two seasons, so that one odd summer does not decide. */
const monthsBack = 24;
/** Fewer months in use than this say nothing about a pace. */
const fewestMonths = 3;
const daysAMonth = 30.436875;

interface Stretch {
  readonly from: Day;
  readonly to: Day;
}

/** Times laid up, from the lay-up to the return; open-ended while it is still laid up. */
function layUps(jobs: readonly Job[], today: Day): readonly Stretch[] {
  const found: Stretch[] = [];
  let since: Day | undefined;
  for (const job of jobs) {
    if (job.kind === 'lay-up') since ??= job.date.from;
    if (since === undefined || (job.kind !== 'return' && job.kind !== 'waking')) continue;
    found.push({ from: since, to: job.date.from });
    since = undefined;
  }
  return since === undefined ? found : [...found, { from: since, to: today }];
}

/** Days of the month that were not laid up. */
function daysInUse(month: Stretch, stored: readonly Stretch[]): number {
  const whole = dayNumber(month.to) - dayNumber(month.from);
  const away = stored.map(
    (one) => Math.min(dayNumber(one.to), dayNumber(month.to)) - Math.max(dayNumber(one.from), dayNumber(month.from)),
  );
  return whole - away.reduce((total, days) => total + Math.max(0, days), 0);
}

/** The value a share of the sorted list lies below, straight between its neighbours. */
function quantile(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length - 1);
  const low = sorted[Math.floor(place)] ?? 0;
  const high = sorted[Math.ceil(place)] ?? low;
  return low + (high - low) * (place - Math.floor(place));
}

/** Metres a day of each month, back from the last reading, that a record read the clock in and that was mostly in use: a gap says nothing. */
function monthlyPaces(odometer: OdometerWork, jobs: readonly Job[], today: Day): readonly number[] {
  const stored = layUps(jobs, today);
  const last = odometer.travelled.at(-1)?.day;
  const end = last === undefined || last > today ? today : last;
  const read = odometer.travelled.filter((one) => one.job !== undefined).map((one) => one.day);
  const first = read[0];
  const paces: number[] = [];
  for (let back = 0; back < monthsBack; back += 1) {
    const month = { from: addMonths(end, -back - 1), to: addMonths(end, -back) };
    const before = odometer.odometer.machineAt(month.from)?.quantity;
    const after = odometer.odometer.machineAt(month.to)?.quantity;
    const days = daysInUse(month, stored);
    const known = first !== undefined && month.from >= first && read.some((one) => one > month.from && one <= month.to);
    if (known && before !== undefined && after !== undefined && days >= daysAMonth / 2)
      paces.push((after - before) / days);
  }
  return paces;
}

/** The pace of the last two seasons; undefined while too little is known. */
export function ridersPace(odometer: OdometerWork, jobs: readonly Job[], today: Day): Pace | undefined {
  const paces = monthlyPaces(odometer, jobs, today).toSorted((a, b) => a - b);
  if (paces.length < fewestMonths) return undefined;
  const pace = { slow: quantile(paces, 0.25), likely: quantile(paces, 0.5), fast: quantile(paces, 0.75) };
  return pace.likely > 0 ? pace : undefined;
}

/** When `left` metres will be ridden, from today; `late` is open when the slow months stood still. */
export function projectedDays(left: number, pace: Pace | undefined, today: Day): DueLine['projected'] {
  if (pace === undefined || left <= 0) return undefined;
  const on = (metresADay: number): Day => addDays(today, Math.min(Math.ceil(left / metresADay), 36_500));
  const late = pace.slow > 0 ? { late: on(pace.slow) } : {};
  return { early: on(pace.fast), likely: on(pace.likely), ...late };
}
