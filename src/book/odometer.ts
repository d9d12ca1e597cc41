// The odometer: the machine's distance at every reading, between readings, and now; and what may be said of it.
import type { Figure } from '../figure/figure.ts';
import { written } from '../figure/print.ts';
import type { Day } from '../quantity/day.ts';
import { dayNumber } from '../quantity/day-arithmetic.ts';
import type { Unit } from '../quantity/quantity.ts';
import { of } from '../quantity/quantity.ts';
import { kilometre, metreRidden, mile } from '../quantity/units.ts';
import type { DistanceAt, Odometer } from './book.ts';
import { clockReadings, type ClockReading } from './clock-readings.ts';
import type { ClockNow, Travelled } from './distance-travelled.ts';
import { diedUnread, distanceTravelled } from './distance-travelled.ts';
import type { Ground } from './ground.ts';
import type { Machine } from '../records/model.ts';
import { isAlike } from '../records/alike.ts';
import { remembered } from './names.ts';
import { odometerStatement } from './odometer-statement.ts';

/** The odometer with what the due list needs besides: plain metres. */
export interface OdometerWork {
  readonly odometer: Odometer;
  /** Machine's distance at a record, metres: its own reading, else between its neighbours. */
  readonly metresAt: (job: string, day: Day) => number | undefined;
  /** The same before the ride of a record that read the clock when it went out and when it came back. */
  readonly metresBefore: (job: string, day: Day) => number | undefined;
  /** The last reading of a record. */
  readonly readingOf: (job: string) => DistanceAt | undefined;
  /** Its first. */
  readonly readingBefore: (job: string) => DistanceAt | undefined;
  readonly metresNow: number | undefined;
  readonly unit: Unit<'distance ridden'>;
  /** Readings that count, for pace and for a second look. */
  readonly travelled: readonly Travelled[];
}

interface Knot {
  readonly day: number;
  readonly metres: number;
}

const formula = 'd = Σ (out − in) + reading − in';
const source = 'instrument periods in machine.yaml';

function machineFigure(one: Travelled, unit: Unit<'distance ridden'>): Figure<'distance ridden'> | undefined {
  if (one.metres === undefined || one.afterGap === true) return undefined;
  const figure = written(one.reading.reads, one.reading.at);
  const inputs = [{ symbol: 'reading', name: 'clock that day', figure }];
  const working = { calculation: 'odometer', formula, inputs, source };
  return { quantity: of(one.metres, metreRidden), unit, decimals: 0, origin: { kind: 'worked out', working } };
}

function distanceAt(one: Travelled, unit: Unit<'distance ridden'>): DistanceAt {
  const clock = written(one.reading.reads, one.reading.at);
  const machine = machineFigure(one, unit);
  const made: { -readonly [K in keyof DistanceAt]: DistanceAt[K] } = { day: one.day, clock };
  if (one.job !== undefined) made.job = one.job;
  if (machine !== undefined) made.machine = machine;
  return made;
}

/** Index of the last knot not after the day, -1 when all are later. */
function lastNotAfter(knots: readonly Knot[], day: number): number {
  let low = 0;
  let high = knots.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((knots[middle]?.day ?? 0) <= day) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** Straight between two readings; nothing is said outside them. */
function interpolate(knots: readonly Knot[], day: Day): number | undefined {
  const wanted = dayNumber(day);
  const index = lastNotAfter(knots, wanted);
  const before = knots[index];
  if (before === undefined || before.day === wanted) return before?.metres;
  const after = knots[index + 1];
  if (after === undefined) return undefined;
  return before.metres + ((after.metres - before.metres) * (wanted - before.day)) / (after.day - before.day);
}

/** Readings that may be counted from: those since the last gap that no clock counted. */
function counted(travelled: readonly Travelled[]): readonly Travelled[] {
  const gap = travelled.findIndex((one) => one.afterGap === true);
  return travelled.slice(Math.max(0, gap)).filter((one) => one.metres !== undefined);
}

/** Readings at which the distance from the beginning is known. */
function knotsOfWhole(travelled: readonly Travelled[]): readonly Knot[] {
  return travelled.flatMap(({ day, metres, afterGap }) =>
    metres === undefined || afterGap === true ? [] : [{ day: dayNumber(day), metres }],
  );
}

/** The machine as new, and no reading of anybody since. */
function isBeginning(one: Travelled | undefined, today: Day): boolean {
  return one !== undefined && one.job === undefined && one.metres === 0 && one.day < today;
}

/** The last reading; on a dead clock it is only what the clock shows, the machine's distance has gone on uncounted. */
function nowOf(last: DistanceAt | undefined, clock: ClockNow | undefined, today: Day): DistanceAt {
  if (last === undefined) return { day: today };
  if (clock?.period.state !== 'dead') return last;
  // Nobody has read it since it went on: what it shows now is not known either.
  if (last.job === undefined && clock !== undefined && diedUnread(clock.period)) return { day: last.day };
  return { day: last.day, ...(last.clock === undefined ? {} : { clock: last.clock }) };
}

function clockFigure(
  clock: ClockNow | undefined,
  figure: Figure<'distance ridden'>,
): Figure<'distance ridden'> | undefined {
  if (clock === undefined || clock.period.state === 'wrong drive' || clock.period.state === 'dead') return undefined;
  const shown = figure.quantity - clock.ahead;
  // Before its digits began: this clock has never shown it.
  if (shown < 0) return undefined;
  const rounds = Math.floor(shown / clock.round);
  const quantity = of(shown - rounds * clock.round, metreRidden);
  const inputs = [{ symbol: 'd', name: 'distance of the machine', figure }];
  const working = { calculation: 'on-the-clock', formula: 'reading = d − Σ (out − in) + in', inputs, source };
  return { quantity, unit: clock.period.unit, decimals: 0, origin: { kind: 'worked out', working } };
}

interface Kept {
  readonly today: Day;
  readonly readings: readonly ClockReading[];
  readonly work: OdometerWork;
}

/** By the machine: while a binder is served, most changes of a record leave the readings of the clock as they are. */
const kept = new WeakMap<Machine, Kept>();

/** Works the odometer out once, for as long as the clock was read alike; `machineAt` and `metresAt` take log n. */
export function workOdometer(ground: Ground): OdometerWork {
  const { today } = ground;
  const { machine } = ground.records;
  const readings = clockReadings(ground);
  const before = kept.get(machine);
  if (before?.today === today && isAlike(before.readings, readings)) return before.work;
  const work = odometerOf(machine, readings, today);
  kept.set(machine, { today, readings, work });
  return work;
}

/** Keeps the last of a record's values; the first as well where there are several. */
function keepLast<T>(job: string, value: T, last: Map<string, T>, first: Map<string, T>): void {
  const before = last.get(job);
  if (before !== undefined && !first.has(job)) first.set(job, before);
  last.set(job, value);
}

function odometerOf(machine: Machine, clockRead: readonly ClockReading[], today: Day): OdometerWork {
  const { travelled, clock } = distanceTravelled(machine.clock, clockRead);
  const unit =
    clock?.period.unit ?? travelled[0]?.reading.reads.unit ?? (machine.units === 'imperial' ? mile : kilometre);
  const sure = counted(travelled);
  const knots = sure.map((one) => ({ day: dayNumber(one.day), metres: one.metres ?? 0 }));
  const stopped = clock?.period.state === 'dead';
  const whole = knotsOfWhole(travelled);
  const readings = travelled.map((one) => distanceAt(one, unit));
  const ofJob = new Map<string, DistanceAt>();
  const firstOfJob = new Map<string, DistanceAt>();
  for (const one of readings) if (one.job !== undefined) keepLast(one.job, one, ofJob, firstOfJob);
  const own = new Map<string, number>();
  const firstOwn = new Map<string, number>();
  for (const one of sure) if (one.job !== undefined) keepLast(one.job, one.metres ?? 0, own, firstOwn);
  const machineAt = remembered((day: Day): Figure<'distance ridden'> | undefined => {
    const metres = interpolate(whole, day);
    if (metres === undefined) return undefined;
    const working = {
      calculation: 'odometer',
      formula: 'straight between the readings before and after',
      inputs: [],
      source,
    };
    return { quantity: of(metres, metreRidden), unit, decimals: 0, origin: { kind: 'worked out', working } };
  });
  // That it began at nothing years ago does not say what it reads now.
  const neverRead = travelled.length === 1 && isBeginning(travelled[0], today);
  const now = neverRead ? { day: today } : nowOf(readings.at(-1), clock, today);
  return {
    odometer: {
      readings,
      now,
      statement: odometerStatement(machine, travelled),
      machineAt,
      onClock: (figure) => clockFigure(clock, figure),
    },
    metresAt: (job, day) => own.get(job) ?? interpolate(knots, day),
    metresBefore: (job, day) => firstOwn.get(job) ?? own.get(job) ?? interpolate(knots, day),
    readingOf: (job) => ofJob.get(job),
    readingBefore: (job) => firstOfJob.get(job) ?? ofJob.get(job),
    metresNow: stopped || neverRead ? undefined : sure.at(-1)?.metres,
    unit,
    travelled: sure,
  };
}
