// A machine's own checks: new ones in a known or a new hold point, and more that undoes a known one.
import type { Outcome, Problem } from '../../problem/problem.ts';
import { applies } from '../content-kinds/applies.ts';
import type { HoldPoint } from '../content-model.ts';
import { interval } from '../kinds/interval.ts';
import { defineRecord } from '../kinds/record-kind.ts';
import { below } from '../reference.ts';
import { entry, may, need, or, type Out } from '../shapes/fields.ts';
import { choice, id, list, number, text, yesNo } from '../shapes/plain.ts';
import { missingKeys, ownCheck } from './own-check.ts';
import { weakened } from './weakened.ts';

const checkFields = {
  id: need(id, 'its permanent id'),
  check: may(text, 'what is checked'),
  why: may(text, 'the reason'),
  proof: may(choice('look', 'value', 'photo', 'done', 'feel'), 'how it is proved'),
  unit: may(text, 'unit of the value to write down'),
  undoneBy: or(list(text), [], 'what undoes it besides'),
  goodFor: may(interval, 'how long a proof stands'),
  eachTime: may(yesNo, 'looked at anew each time'),
  caution: may(id, 'id of a caution'),
  applies: may(applies, 'machines it is for'),
};
const pointFields = {
  point: need(id, 'its permanent id', { key: 'hold point' }),
  title: may(text, 'its title'),
  order: may(number(0, 99), 'the order of the points'),
  applies: may(applies, 'machines it is for'),
  checks: need(list(entry(checkFields)), 'the checks'),
};
export type OwnCheck = Out<typeof checkFields> & { readonly at: HoldPoint['at'] };
export type OwnPoint = Out<typeof pointFields> & { readonly at: HoldPoint['at'] };

/** As content's hold points, where what is known already may be left out. */
export const ownHoldPointsKind = defineRecord<OwnPoint>({
  id: 'own hold point',
  purpose: 'Checks that a machine adds to a hold point.',
  files: 'hold-points/*.md',
  matches: (file) => /^hold-points\/.+\.md$/u.test(file),
  shape: entry(pointFields),
});

/** All hold points, with the machine's checks in them, in their order. */
export function addHoldPoints(known: readonly HoldPoint[], own: readonly OwnPoint[]): Outcome<readonly HoldPoint[]> {
  const problems: Problem[] = [];
  const points = new Map(known.map((point) => [point.id, point]));
  for (const added of own) {
    const before = points.get(added.point) ?? newPoint(added, problems);
    if (before === undefined) continue;
    problems.push(...changed(before, added));
    let { checks } = before;
    for (const check of added.checks) {
      const elsewhere = [...points.values()].find(
        (one) => one.id !== before.id && one.checks.some((each) => each.id === check.id),
      );
      if (elsewhere !== undefined) {
        problems.push(weakened(check.at, 'id', `a check of “${elsewhere.title}”`, 'Give yours an id of its own.'));
        continue;
      }
      const at = checks.findIndex((one) => one.id === check.id);
      const made = ownCheck(checks[at], check);
      problems.push(...made.problems);
      if (made.value !== undefined) checks = at < 0 ? [...checks, made.value] : checks.with(at, made.value);
    }
    points.set(before.id, { ...before, checks });
  }
  const value = [...points.values()].toSorted((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));
  return { value, problems };
}

function newPoint({ point, title, order, applies: wanted, at }: OwnPoint, problems: Problem[]): HoldPoint | undefined {
  problems.push(...missingKeys({ title, order }, at, 'a new hold point'));
  return title === undefined || order === undefined
    ? undefined
    : { id: point, title, order, checks: [], applies: wanted ?? {}, at };
}

function changed(before: HoldPoint, added: OwnPoint): readonly Problem[] {
  const same = (key: 'title' | 'order' | 'applies'): boolean =>
    added[key] === undefined || JSON.stringify(added[key]) === JSON.stringify(before[key]);
  return (['title', 'order', 'applies'] as const)
    .filter((key) => !same(key))
    .map((key) =>
      weakened(
        below(added.at),
        key,
        `the hold point “${before.title}”`,
        `Leave \`${key}\` out; checks are added all the same.`,
      ),
    );
}
