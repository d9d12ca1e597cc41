// Two people at one machine on one day, each with a record: what they wrote of the same thing, and who looked at whose work.
import type { Problem } from '../../problem/problem.ts';
import type { Check } from '../../records/content-model.ts';
import type { Job, Reading, ReadingValue, Verb, WorkEntry } from '../../records/model.ts';
import { makeReach, type Reach } from '../disturbance.ts';
import type { Ground } from '../ground.ts';
import { closesState, opensState } from '../off-states.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

interface Pair {
  readonly one: Job;
  readonly other: Job;
}
interface Bench {
  readonly ground: Ground;
  readonly reach: Reach;
  readonly checks: ReadonlyMap<string, Check>;
}

/** Nobody writes more of one day; every two of them are compared. */
const mostOfADay = 12;

/** Records of one day alone that have no hand in common; one that names nobody is left out. */
function pairsOf(jobs: readonly Job[]): readonly Pair[] {
  const days = new Map<string, Job[]>();
  for (const job of jobs) {
    if (job.hands.length === 0 || job.date.from !== job.date.to) continue;
    const day = days.get(job.date.from);
    if (day === undefined) days.set(job.date.from, [job]);
    else day.push(job);
  }
  const apart = (one: Job, other: Job): boolean => !other.hands.some((hand) => one.hands.includes(hand));
  return [...days.values()]
    .filter((day) => day.length <= mostOfADay)
    .flatMap((day) =>
      day.flatMap((one, index) =>
        day
          .slice(index + 1)
          .filter((other) => apart(one, other))
          .map((other) => ({ one, other })),
      ),
    );
}

const handsOf = (job: Job): string => job.hands.join(' and ');

/** One reading left at two values; a part taken off by one and put back by the other; a check ticked beside work that undoes it. */
export const twoPeopleDisagree: Look = ({ ground }) => {
  const pairs = pairsOf(ground.jobs);
  if (pairs.length === 0) return [];
  const all = ground.content.holdPoints.flatMap((point) => point.checks);
  const bench = { ground, reach: makeReach(ground), checks: new Map(all.map((check) => [check.id, check])) };
  return pairs.flatMap((pair) => [
    ...leftOtherwise(pair, bench),
    ...offAndOn(pair, bench),
    ...tickedBeside(pair.one, pair.other, bench),
    ...tickedBeside(pair.other, pair.one, bench),
  ]);
};

function differ(was: ReadingValue, now: ReadingValue): boolean {
  if (was.position !== now.position || was.value.kind !== 'read' || now.value.kind !== 'read') return false;
  return was.value.written.quantity !== now.value.written.quantity;
}

function leftOtherwise({ one, other }: Pair, { ground }: Bench): readonly Problem[] {
  const before = new Map<string, Reading>(one.readings.map((reading) => [ground.key(reading.item), reading]));
  return other.readings.flatMap(({ item, left, at }) => {
    const first = before.get(ground.key(item));
    if (first?.left.some((was) => left.some((now) => differ(was, now))) !== true) return [];
    return [disagree(at, `${item}: left otherwise by ${handsOf(other)} than by ${handsOf(one)}`, one)];
  });
}

const stateOf = (verb: Verb): string => opensState(verb) ?? closesState(verb) ?? '';

function offAndOn({ one, other }: Pair, { ground }: Bench): readonly Problem[] {
  const name = ({ verb, thing }: WorkEntry): string => `${stateOf(verb)} ${ground.key(thing)}`;
  // Whoever opens and closes a thing in one record has settled it there: the last word counts.
  const [first, last] = [one, other].map((job) => new Map(job.work.map((entry) => [name(entry), entry])));
  return [...(last ?? [])].flatMap(([key, entry]) => {
    const was = first?.get(key);
    const opens = (verb: Verb): boolean => opensState(verb) !== undefined;
    if (was === undefined || opens(was.verb) === opens(entry.verb)) return [];
    const said = `${entry.thing}: ${entry.verb} by ${handsOf(other)} and ${was.verb} by ${handsOf(one)}`;
    return [disagree(entry.at, said, one)];
  });
}

function tickedBeside(ticks: Job, works: Job, { ground, reach, checks }: Bench): readonly Problem[] {
  const touched = new Map(
    works.work.flatMap((entry) => reach(ground.key(entry.thing)).map((key) => [key, entry] as const)),
  );
  return ticks.checks.flatMap(({ check, by: hand, at }) => {
    const undoneBy = checks.get(check)?.undoneBy ?? [];
    const by = undoneBy.map((thing) => touched.get(ground.key(thing))).find((entry) => entry !== undefined);
    if (by === undefined) return [];
    const said = `${check}: ticked by ${hand ?? handsOf(ticks)}, and ${by.thing} was ${by.verb} by ${handsOf(works)}`;
    return [disagree(at, said, works)];
  });
}

function disagree(at: Problem['at'], said: string, other: Job): Problem {
  const message = `${said} on the same day (${other.title})`;
  return query('two-people-disagree', at, message, 'say in a later record which came last, and what stands');
}

/** A check that is said to be looked at by a second person, who is the one who did it. */
export const checkedByItsOwnHand: Look = ({ ground }) =>
  ground.jobs.flatMap((job) =>
    job.checks.flatMap(({ check, by, checkedBy, at }) => {
      const hand = by ?? job.hands[0];
      if (checkedBy === undefined || checkedBy !== hand) return [];
      const message = `${check}: done and checked by ${checkedBy}`;
      return [query('checked-by-its-own-hand', at, message, 'let somebody else look, or leave `checked by` out')];
    }),
  );
