// Whichever comes first: each bound of a step against where the machine stands now.
import type { Day } from '../../quantity/day.ts';
import { dayNumber } from '../../quantity/day-arithmetic.ts';
import type { DueState } from '../book.ts';
import type { Step } from './steps.ts';

/** Where the machine stands: today, its distance, its hour meter. */
export interface Now {
  readonly today: Day;
  readonly metres?: number;
  readonly seconds?: number;
}

export interface Bound {
  readonly kind: 'distance' | 'date' | 'hours';
  /** What is left, in metres, days or seconds; negative when past. */
  readonly left: number;
  /** Share of the interval used: 1 when due. */
  readonly used: number;
  readonly state: DueState;
}

/** A service is named beforehand when a tenth of its interval is left (our choice; a month before a year's end). */
const comingShare = 0.1;

/** Past the bound but within its grace is due; past the grace is overdue. */
function stateOf(left: number, interval: number, grace: number): DueState {
  if (left < -grace * interval) return 'overdue';
  if (left <= 0) return 'due';
  return left <= comingShare * interval ? 'coming' : 'not due';
}

function bound(kind: Bound['kind'], due: number, now: number, start: number, grace: number): Bound {
  const interval = Math.max(due - start, Number.MIN_VALUE);
  const left = due - now;
  return { kind, left, used: (now - start) / interval, state: stateOf(left, interval, grace) };
}

/** The bounds that can be judged, the one nearest its end (or furthest past it) first. */
export function boundsOf(step: Step, now: Now, grace: number): readonly Bound[] {
  const found: Bound[] = [];
  if (step.dueMetres !== undefined && now.metres !== undefined) {
    found.push(bound('distance', step.dueMetres, now.metres, step.from.metres ?? 0, grace));
  }
  if (step.dueDay !== undefined && step.from.day !== undefined) {
    found.push(bound('date', dayNumber(step.dueDay), dayNumber(now.today), dayNumber(step.from.day), grace));
  }
  if (step.dueSeconds !== undefined && now.seconds !== undefined) {
    found.push(bound('hours', step.dueSeconds, now.seconds, step.from.seconds ?? 0, grace));
  }
  return found.toSorted((a, b) => b.used - a.used);
}

/** Due and overdue first. */
const ranks: Readonly<Record<DueState, number>> = {
  overdue: 0,
  due: 1,
  coming: 2,
  'not known': 3,
  'at its limit': 4,
  'not due': 5,
  'done once': 6,
};

/** Order of the due list: 0 is the most urgent. */
export function rankOf(state: DueState): number {
  return ranks[state];
}

/** The more urgent of two states. */
export function worse(a: DueState, b: DueState): DueState {
  return ranks[a] <= ranks[b] ? a : b;
}
