// The machine's own distance: what each clock counted while it was fitted, added up over its instrument periods.
import type { Day } from '../quantity/day.ts';
import { of } from '../quantity/quantity.ts';
import type { InstrumentPeriod } from '../records/model.ts';
import type { ClockReading } from './clock-readings.ts';
import { byPeriod } from './clock-readings.ts';

/** A reading with the machine's distance there, in metres; `metres` is absent where the clock cannot be trusted. */
export interface Travelled {
  readonly day: Day;
  /** Id of the record. */
  readonly job?: string;
  readonly reading: ClockReading;
  readonly metres?: number;
  /** Some distance before it was counted by no clock: differences after that hold, the whole does not. */
  readonly afterGap?: true;
}

/** The clock fitted last, and what to take from the machine's distance to get its reading. */
export interface ClockNow {
  readonly period: InstrumentPeriod;
  /** Machine's distance less the clock's reading, metres, before rolling over. */
  readonly ahead: number;
  /** Metres after which the digits begin again. */
  readonly round: number;
}

/** A clock that died, and nobody knows at what: what was ridden on it after its last rising reading is not known. */
export function diedUnread(period: InstrumentPeriod): boolean {
  return period.state === 'dead' && period.to?.reads === undefined;
}

export interface Distance {
  readonly travelled: readonly Travelled[];
  readonly clock?: ClockNow;
}

interface Leg {
  readonly travelled: readonly Travelled[];
  readonly end: number;
  readonly ahead: number;
}

type Growing = { -readonly [K in keyof Travelled]: Travelled[K] };

/** Put together key by key: thousands of readings are, and spreading costs more than all else here. */
function travelledAt(reading: ClockReading, metres: number | undefined, afterGap: boolean): Travelled {
  const one: Growing = { day: reading.day, reading };
  if (reading.job !== undefined) one.job = reading.job;
  if (metres !== undefined) one.metres = metres;
  if (afterGap) one.afterGap = true;
  return one;
}

/** The readings of one period with its own two ends put before and after. */
function withEnds(period: InstrumentPeriod, readings: readonly ClockReading[]): readonly ClockReading[] {
  const at = period.at;
  const first = period.from.reads === undefined ? [] : [{ day: period.from.day, reads: period.from.reads, at }];
  const last = period.to?.reads === undefined ? [] : [{ day: period.to.day, reads: period.to.reads, at }];
  return [...first, ...readings, ...last];
}

/**
 * One period, beginning at the machine's distance `start` (metres). The first clock's reading is taken as the machine's
 * own; a later clock counts from where the one before it stopped. A reading lower than the one before is a new round of
 * the digits in a period marked as rolled over; elsewhere it is not counted at all. On a clock that died unread only a
 * reading above the one before was surely counted.
 */
function leg(
  period: InstrumentPeriod,
  readings: readonly ClockReading[],
  start: number | undefined,
  afterGap: boolean,
): Leg {
  const all = withEnds(period, readings);
  const round = of(10 ** period.digits, period.unit);
  let ahead = start === undefined || all[0] === undefined ? 0 : start - all[0].reads.quantity;
  let last = Number.NEGATIVE_INFINITY;
  const travelled: Travelled[] = [];
  for (const reading of all) {
    const shown = reading.reads.quantity;
    const back = shown + ahead < last;
    if (back && period.state === 'rolled over') ahead += round;
    const stood = shown + ahead === last && diedUnread(period);
    const counts = period.state !== 'wrong drive' && shown + ahead >= last && !stood;
    if (counts) last = shown + ahead;
    travelled.push(travelledAt(reading, counts ? shown + ahead : undefined, afterGap));
  }
  return { travelled, ahead, end: Number.isFinite(last) ? last : (start ?? 0) };
}

/** Adds up all periods, oldest first; linear in the readings. Of a clock that nobody described only differences hold. */
export function distanceTravelled(periods: readonly InstrumentPeriod[], readings: readonly ClockReading[]): Distance {
  if (periods.length === 0) return { travelled: readings.map((one) => travelledAt(one, one.reads.quantity, true)) };
  const own = byPeriod(periods, readings);
  const travelled: Travelled[] = [];
  let start: number | undefined;
  let clock: ClockNow | undefined;
  let afterGap = false;
  for (const period of periods) {
    const one = leg(period, own.get(period) ?? [], start, afterGap);
    for (const each of one.travelled) travelled.push(each);
    start = one.end;
    afterGap ||= diedUnread(period);
    clock = { period, ahead: one.ahead, round: of(10 ** period.digits, period.unit) };
  }
  return clock === undefined ? { travelled } : { travelled, clock };
}
