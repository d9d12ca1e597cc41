// One check that a machine writes: a new one in full, or what it adds to a known one.
import type { Outcome, Place, Problem } from '../../problem/problem.ts';
import type { Check } from '../content-model.ts';
import type { Interval } from '../model.ts';
import { below } from '../reference.ts';
import type { OwnCheck } from './own-hold-points.ts';
import { weakened } from './weakened.ts';

/** The check as it holds from now on; undefined where it cannot be made. */
export function ownCheck(before: Check | undefined, own: OwnCheck): Outcome<Check | undefined> {
  return before === undefined ? newCheck(own) : strengthened(before, own);
}

function newCheck(own: OwnCheck): Outcome<Check | undefined> {
  const { check, why, proof, applies, ...rest } = own;
  const problems = missingKeys({ check, why, proof }, own.at, 'a new check');
  if (check === undefined || why === undefined || proof === undefined) return { value: undefined, problems };
  return { value: { ...rest, text: check, why, proof, applies: applies ?? {} }, problems };
}

function strengthened(before: Check, own: OwnCheck): Outcome<Check> {
  const same = (now: unknown, was: unknown): boolean =>
    now === undefined || JSON.stringify(now) === JSON.stringify(was);
  const kept: readonly (readonly [string, boolean])[] = [
    ['check', same(own.check, before.text)],
    ['why', same(own.why, before.why)],
    ['proof', same(own.proof, before.proof)],
    ['unit', same(own.unit, before.unit)],
    ['applies', same(own.applies, before.applies)],
    ['each time', same(own.eachTime, before.eachTime)],
    ['caution', before.caution === undefined || same(own.caution, before.caution)],
    ['good for', own.goodFor === undefined || noLonger(own.goodFor, before.goodFor)],
  ];
  const hint =
    'Add what undoes it under `undone by`, or a shorter `good for`; for anything else write a check of your own.';
  const problems = kept.flatMap(([key, is]) =>
    is ? [] : [weakened(own.at, key, `“${key}” of the check “${before.id}”`, hint)],
  );
  if (problems.length > 0) return { value: before, problems };
  const value = {
    ...before,
    undoneBy: [...new Set([...before.undoneBy, ...own.undoneBy])],
    ...(own.goodFor === undefined ? {} : { goodFor: own.goodFor }),
    ...(own.caution === undefined ? {} : { caution: own.caution }),
  };
  return { value, problems };
}

/** Every bound of the earlier interval is there and is no longer; further bounds only make it run out sooner. */
function noLonger(now: Interval, before: Interval | undefined): boolean {
  if (before === undefined) return true;
  const within = (own: number | undefined, was: number | undefined): boolean =>
    was === undefined || (own !== undefined && own <= was);
  return (
    within(now.months, before.months) &&
    within(now.distance?.quantity, before.distance?.quantity) &&
    within(now.running?.quantity, before.running?.quantity)
  );
}

/** Keys that a new thing cannot do without. */
export function missingKeys(given: Readonly<Record<string, unknown>>, at: Place, what: string): readonly Problem[] {
  return Object.entries(given)
    .filter(([, value]) => value === undefined)
    .map(([key]) => ({
      code: 'key-missing',
      severity: 'problem',
      at: below(at),
      message: `“${key}” is missing, and ${what} needs it.`,
      hint: `Write \`${key}:\`; only what adds to a known one may leave it out.`,
    }));
}
