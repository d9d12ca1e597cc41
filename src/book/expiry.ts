// A proof that runs out: good for a time or a distance, whichever comes first.
import type { Day } from '../quantity/day.ts';
import { of } from '../quantity/quantity.ts';
import { metreRidden } from '../quantity/units.ts';
import { printQuantity } from '../figure/print.ts';
import type { Check } from '../records/content-model.ts';
import type { Job } from '../records/model.ts';
import { boundsOf } from './due/bounds.ts';
import type { Step } from './due/steps.ts';
import { stepFrom } from './due/steps.ts';
import type { OdometerWork } from './odometer.ts';

/** A moment to judge a proof at. */
export interface Moment {
  readonly day: Day;
  readonly metres?: number;
}

export interface Expiry {
  /** True when a bound has been passed at the moment asked for. */
  readonly past: boolean;
  /** `12 months: until 2026-05-01`. */
  readonly words: string;
  readonly day?: Day;
}

/** Today, at the distance the machine has now. */
export function momentOf(day: Day, metres: number | undefined): Moment {
  return metres === undefined ? { day } : { day, metres };
}

function wordsOf(step: Step, odometer: OdometerWork): string {
  const ends = [
    step.dueDay === undefined ? undefined : `until ${step.dueDay}`,
    step.dueMetres === undefined
      ? undefined
      : `until ${printQuantity(of(step.dueMetres, metreRidden), odometer.unit, 0)}`,
  ].filter((end) => end !== undefined);
  return ends.length === 0 ? step.interval.text : `${step.interval.text}: ${ends.join(' or ')}`;
}

/** How long the proof of a record stands; undefined for a check whose proof does not run out. */
export function expiryOf(check: Check, proved: Job, odometer: OdometerWork, moment: Moment): Expiry | undefined {
  if (check.goodFor === undefined) return undefined;
  const day = proved.date.from;
  const metres = odometer.metresAt(proved.id, day);
  const step = stepFrom({ day, words: 'proved', ...(metres === undefined ? {} : { metres }) }, check.goodFor);
  const now = { today: moment.day, ...(moment.metres === undefined ? {} : { metres: moment.metres }) };
  const past = boundsOf(step, now, 0).some((bound) => bound.left < 0);
  const words = wordsOf(step, odometer);
  return step.dueDay === undefined ? { past, words } : { past, words, day: step.dueDay };
}
