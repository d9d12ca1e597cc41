// The next step of a service line: which bound it has and from where it counts.
import type { Day } from '../../quantity/day.ts';
import { addMonths, readDaySpan } from '../../quantity/day-arithmetic.ts';
import type { Interval, ServiceLine } from '../../records/model.ts';
import { diedUnread } from '../distance-travelled.ts';
import type { Ground } from '../ground.ts';
import type { Happened, Moment } from './happened.ts';

/** Where a step counts from: a record, or the machine as new. */
export interface Start {
  readonly day?: Day;
  readonly metres?: number;
  readonly seconds?: number;
  /** `last done 2026-05-02`, `rebuilt 2026-03-01`, `new`. */
  readonly words: string;
}

export interface Step {
  readonly from: Start;
  /** As written by the maker: the bounds of this step. */
  readonly interval: Interval;
  readonly dueMetres?: number;
  readonly dueDay?: Day;
  readonly dueSeconds?: number;
}

export type Next =
  | { readonly kind: 'step'; readonly step: Step }
  | { readonly kind: 'unknown' }
  | { readonly kind: 'once' }
  | { readonly kind: 'none' };

function startAt(moment: Moment, words: string): Start {
  const { day, metres, seconds } = moment;
  return { day, words, ...(metres === undefined ? {} : { metres }), ...(seconds === undefined ? {} : { seconds }) };
}

/** All bounds of an interval counted from a start; a bound whose start is not known falls away. */
export function stepFrom(from: Start, interval: Interval): Step {
  const { distance, months, running } = interval;
  const far = distance === undefined || from.metres === undefined ? undefined : from.metres + distance.quantity;
  const late = months === undefined || from.day === undefined ? undefined : addMonths(from.day, months);
  const long = running === undefined || from.seconds === undefined ? undefined : from.seconds + running.quantity;
  return {
    from,
    interval,
    ...(far === undefined ? {} : { dueMetres: far }),
    ...(late === undefined ? {} : { dueDay: late }),
    ...(long === undefined ? {} : { dueSeconds: long }),
  };
}

/** The machine as new, when its first clock began at nothing: the only time a distance from new is known. */
function fromNew(ground: Ground): Start | undefined {
  const { clock, firstUse } = ground.records.machine;
  if (clock[0]?.from.reads?.quantity !== 0) return undefined;
  const span = firstUse === undefined ? undefined : readDaySpan(firstUse);
  const day = span?.ok === true ? span.value.from : clock[0].from.day;
  return clock.some(diedUnread) ? { words: 'new', day } : { words: 'new', metres: 0, day };
}

/** A rebuilt engine starts its own items again, and only those; so does any part that a line is `part of`. */
function restartOf(line: ServiceLine, happened: Happened, ground: Ground): Moment | undefined {
  return line.partOf === undefined ? undefined : happened.rebuilt.get(ground.key(line.partOf));
}

/** The next column of a chart that repeats from `thenFrom`: columns stand on the clock, early or late work does not move them. */
function column(line: ServiceLine, every: Interval, start: Start, last: Moment): Step | undefined {
  const base = line.thenFrom?.distance?.quantity;
  const gap = every.distance?.quantity;
  if (base === undefined || gap === undefined || start.metres === undefined || last.metres === undefined)
    return undefined;
  const done = Math.round((last.metres - start.metres - base) / gap);
  const step = stepFrom(startAt(last, `last done ${last.day}`), every);
  return { ...step, dueMetres: start.metres + base + Math.max(0, done + 1) * gap };
}

/** The odd second step, counted on the clock from the start of the chart; only while it still lies ahead of the last service. */
function secondStep(line: ServiceLine, start: Start | undefined, last: Moment, count: number): Step | undefined {
  if (line.second === undefined || start === undefined || count !== 1) return undefined;
  const step = stepFrom(start, line.second);
  const passed = step.dueMetres !== undefined && last.metres !== undefined && step.dueMetres <= last.metres;
  const past = step.dueDay !== undefined && step.dueDay <= last.day;
  return passed || past ? undefined : { ...step, from: startAt(last, `last done ${last.day}`) };
}

/** Yearly only if no distance service was done: such a service counts as this one. */
function lastOf(line: ServiceLine, done: readonly Moment[], happened: Happened): Moment | undefined {
  const own = done.at(-1);
  const other = line.onlyIfNoDistanceService ? happened.distanceService : undefined;
  if (own === undefined || other === undefined) return own ?? other;
  return other.order > own.order ? other : own;
}

/** Never done on the records: the first step from new or from the rebuild if that is known, else unknown history. */
function firstStep(
  line: ServiceLine,
  restart: Moment | undefined,
  ground: Ground,
  passed: (step: Step) => boolean,
): Next {
  const interval = line.first?.at ?? line.every ?? line.second;
  if (interval === undefined) return { kind: 'none' };
  if (restart !== undefined)
    return {
      kind: 'step',
      step: stepFrom(startAt(restart, `${line.partOf ?? 'part'} renewed ${restart.day}`), interval),
    };
  const start = fromNew(ground);
  if (start === undefined) return { kind: 'unknown' };
  const step = stepFrom(start, interval);
  return passed(step) ? { kind: 'unknown' } : { kind: 'step', step };
}

/** The shortest interval that hard use since the last service asks for; undefined when there was none. */
export function severeInterval(
  line: ServiceLine,
  happened: Happened,
  since: number,
): { readonly word: string; readonly interval: Interval | 'at once' } | undefined {
  const uses = Object.entries(line.severe).filter(([word]) => (happened.severe.get(word)?.order ?? -1) > since);
  const length = (interval: Interval | 'at once'): number =>
    interval === 'at once' ? 0 : (interval.distance?.quantity ?? Number.POSITIVE_INFINITY);
  const [found] = uses.toSorted((a, b) => length(a[1]) - length(b[1]));
  return found === undefined ? undefined : { word: found[0], interval: found[1] };
}

/** The next step of a line. `passed` tells whether a step is already behind: then a history from new is not believed. */
export function nextStep(line: ServiceLine, happened: Happened, ground: Ground, passed: (step: Step) => boolean): Next {
  const restart = restartOf(line, happened, ground);
  const done = (happened.done.get(line.id) ?? []).filter((one) => restart === undefined || one.order > restart.order);
  const last = lastOf(line, done, happened);
  if (last === undefined) return firstStep(line, restart, ground, passed);
  const start = restart === undefined ? fromNew(ground) : startAt(restart, 'renewed');
  const second = secondStep(line, start, last, done.length);
  if (second !== undefined) return { kind: 'step', step: second };
  const hard = severeInterval(line, happened, last.order)?.interval;
  const every = hard === undefined || hard === 'at once' ? line.every : hard;
  if (every === undefined) return line.first === undefined ? { kind: 'none' } : { kind: 'once' };
  const anchored = start === undefined ? undefined : column(line, every, start, last);
  return { kind: 'step', step: anchored ?? stepFrom(startAt(last, `last done ${last.day}`), every) };
}
