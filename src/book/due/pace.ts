// The rider's own pace, from the months the machine was in use; and when a distance will be reached at it, as a span.
import type { Day } from '../../quantity/day.ts';
import { addDays, addMonths, dayNumber } from '../../quantity/day-arithmetic.ts';
import type { Job } from '../../records/model.ts';
import type { DueLine } from '../book.ts';
import type { OdometerWork } from '../odometer.ts';

/** Metres a day. `likely` is the mean of the months in use; `slow` and `fast` are the slowest and fastest
 * half-years among them (or half of what there is). A month that stood still is not in use; it slows `slow` alone. */
export interface Pace {
  readonly slow: number;
  readonly likely: number;
  readonly fast: number;
}

/** Months looked back over: two seasons, so that one odd summer does not decide. */
const monthsBack = 24;
/** Fewer months in use than this say nothing about a pace. */
const fewestMonths = 3;
const halfYear = 6;
const longestGap = 183;
/** Further ahead than ten years nobody's pace says anything. */
const furthest = 3653;

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

interface Month {
  readonly metres: number;
  readonly days: number;
  readonly calendarDays: number;
}

/** Times longer than half a year without a reading: nobody knows how they were ridden. */
function gaps(read: readonly { readonly day: Day }[], earliest: Day): readonly Stretch[] {
  const found: Stretch[] = [];
  for (let index = read.length - 1; index > 0; index -= 1) {
    const [from, to] = [read[index - 1]?.day, read[index]?.day];
    if (from === undefined || to === undefined || to < earliest) break;
    if (from !== to && dayNumber(to) - dayNumber(from) > longestGap) found.push({ from, to });
  }
  return found;
}

function within(month: Stretch, stretches: readonly Stretch[]): boolean {
  return stretches.some((one) => one.from <= month.from && month.to <= one.to);
}

/** The months back from the last reading, newest first, that are known: after the first reading and in no gap. */
function knownMonths(odometer: OdometerWork, jobs: readonly Job[], today: Day): readonly Month[] {
  const read = odometer.travelled.filter((one) => one.job !== undefined);
  const [first, last] = [read[0]?.day, read.at(-1)?.day];
  if (first === undefined || last === undefined) return [];
  const stored = layUps(jobs, today);
  const end = last > today ? today : last;
  const unknown = gaps(read, addMonths(end, -monthsBack));
  const months: Month[] = [];
  for (let back = 0; back < monthsBack; back += 1) {
    const month = { from: addMonths(end, -back - 1), to: addMonths(end, -back) };
    const before = odometer.odometer.machineAt(month.from)?.quantity;
    const after = odometer.odometer.machineAt(month.to)?.quantity;
    if (month.from < first || before === undefined || after === undefined || within(month, unknown)) continue;
    const calendarDays = dayNumber(month.to) - dayNumber(month.from);
    months.push({ metres: after - before, days: daysInUse(month, stored), calendarDays });
  }
  return months;
}

function total(months: readonly Month[], of: (month: Month) => number): number {
  return months.reduce((sum, month) => sum + of(month), 0);
}

function mean(months: readonly Month[]): number {
  return total(months, (month) => month.metres) / total(months, (month) => month.days);
}

/** Mean pace of every run of so many months in use. */
function runs(months: readonly Month[], length: number): readonly number[] {
  return months.slice(0, months.length - length + 1).map((_month, index) => mean(months.slice(index, index + length)));
}

/**
 * The pace of the last two seasons; undefined while too little is known. Months laid up or in pieces do not slow `likely` and `fast`;
 * `slow` is not faster than the mean over the calendar, lay-ups and all, because the next winter comes too.
 */
export function ridersPace(odometer: OdometerWork, jobs: readonly Job[], today: Day): Pace | undefined {
  const known = knownMonths(odometer, jobs, today);
  const inUse = known.filter((month) => month.metres > 0 && month.days >= month.calendarDays / 2);
  if (inUse.length < fewestMonths) return undefined;
  const paces = runs(inUse, Math.min(halfYear, Math.ceil(inUse.length / 2)));
  const calendar = total(known, (month) => month.metres) / total(known, (month) => month.calendarDays);
  const pace = { slow: Math.min(...paces, calendar), likely: mean(inUse), fast: Math.max(...paces) };
  return pace.likely > 0 ? pace : undefined;
}

/** When `left` metres will be ridden, from today; `late` is open when the slow months stood still. */
export function projectedDays(left: number, pace: Pace | undefined, today: Day): DueLine['projected'] {
  if (pace === undefined || left <= 0) return undefined;
  const on = (metresADay: number): Day => addDays(today, Math.ceil(left / metresADay));
  const late = pace.slow > 0 && left / pace.slow < furthest ? { late: on(pace.slow) } : {};
  if (left / pace.likely >= furthest) return undefined;
  return { early: on(pace.fast), likely: on(pace.likely), ...late };
}
