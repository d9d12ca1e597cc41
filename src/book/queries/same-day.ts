// Two people at one machine on one day, each with a record: what they wrote of the same thing, and who looked at whose work.
import type { Problem } from '../../problem/problem.ts';
import type { Check } from '../../records/content-model.ts';
import type { Job, Reading, ReadingValue, Verb, WorkEntry } from '../../records/model.ts';
import { makeReach, type Reach } from '../disturbance.ts';
import type { Ground } from '../ground.ts';
import { closesState, opensState } from '../off-states.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

interface Bench {
  readonly ground: Ground;
  readonly reach: Reach;
  readonly checks: ReadonlyMap<string, Check>;
}

/** What somebody wrote of a thing on a day: the last of each pair of hands, by the thing and then by the hands. */
type Words<T> = Map<string, Map<string, { readonly job: Job; readonly said: T }>>;

const handsOf = (job: Job): string => job.hands.join(' and ');
const apart = (one: Job, other: Job): boolean => !other.hands.some((hand) => one.hands.includes(hand));

function write<T>(words: Words<T>, thing: string, job: Job, said: T): void {
  const known = words.get(thing);
  const fresh = known ?? new Map<string, { readonly job: Job; readonly said: T }>();
  fresh.set(handsOf(job), { job, said });
  if (known === undefined) words.set(thing, fresh);
}

/** What others wrote of a thing. */
function ofOthers<T>(words: Words<T>, thing: string, job: Job): readonly { readonly job: Job; readonly said: T }[] {
  return [...(words.get(thing)?.values() ?? [])].filter((one) => apart(one.job, job));
}

/** Records of one day alone, by their day; one that names nobody is left out, and so is a day with one pair of hands. */
function daysOfSeveral(jobs: readonly Job[]): readonly (readonly Job[])[] {
  const days: Job[][] = [];
  for (const job of jobs) {
    if (job.hands.length === 0 || job.date.from !== job.date.to) continue;
    // The records come in the order of their days.
    const day = days.at(-1);
    if (day !== undefined && day[0]?.date.from === job.date.from) day.push(job);
    else days.push([job]);
  }
  return days.filter((day) => day.length > 1 && new Set(day.map(handsOf)).size > 1);
}

/** One reading left at two values; a part taken off by one and put back by the other; a check ticked beside work that undoes it. Linear in the records. */
export const twoPeopleDisagree: Look = ({ ground }) => {
  const days = daysOfSeveral(ground.jobs);
  if (days.length === 0) return [];
  const all = ground.content.holdPoints.flatMap((point) => point.checks);
  const bench = { ground, reach: makeReach(ground), checks: new Map(all.map((check) => [check.id, check])) };
  return days.flatMap((day) => [...leftOtherwise(day, bench), ...offAndOn(day, bench), ...tickedBeside(day, bench)]);
};

function differ(was: ReadingValue, now: ReadingValue): boolean {
  if (was.position !== now.position || was.value.kind !== 'read' || now.value.kind !== 'read') return false;
  return was.value.written.quantity !== now.value.written.quantity;
}

function leftOtherwise(day: readonly Job[], { ground }: Bench): readonly Problem[] {
  const words: Words<Reading> = new Map();
  return day.flatMap((job) =>
    job.readings.flatMap((reading) => {
      const item = ground.key(reading.item);
      const others = ofOthers(words, item, job).filter(({ said }) =>
        said.left.some((was) => reading.left.some((now) => differ(was, now))),
      );
      write(words, item, job, reading);
      return others.map(({ job: one }) =>
        disagree(reading.at, `${reading.item}: left otherwise by ${handsOf(job)} than by ${handsOf(one)}`, one),
      );
    }),
  );
}

const stateOf = (verb: Verb): string => opensState(verb) ?? closesState(verb) ?? '';
const opens = (verb: Verb): boolean => opensState(verb) !== undefined;

function offAndOn(day: readonly Job[], { ground }: Bench): readonly Problem[] {
  const words: Words<WorkEntry> = new Map();
  const name = ({ verb, thing }: WorkEntry): string => `${stateOf(verb)} ${ground.key(thing)}`;
  return day.flatMap((job) => {
    // Whoever opens and closes a thing in one record has settled it there: the last word counts.
    const last = new Map(job.work.map((entry) => [name(entry), entry]));
    return [...last].flatMap(([thing, entry]) => {
      const others = ofOthers(words, thing, job).filter(({ said }) => opens(said.verb) !== opens(entry.verb));
      write(words, thing, job, entry);
      return others.map(({ job: one, said }) =>
        disagree(entry.at, `${entry.thing}: ${entry.verb} by ${handsOf(job)} and ${said.verb} by ${handsOf(one)}`, one),
      );
    });
  });
}

function tickedBeside(day: readonly Job[], { ground, reach, checks }: Bench): readonly Problem[] {
  if (!day.some((job) => job.checks.length > 0)) return [];
  const touched: Words<WorkEntry> = new Map();
  for (const job of day) {
    for (const entry of job.work) for (const key of reach(ground.key(entry.thing))) write(touched, key, job, entry);
  }
  return day.flatMap((job) =>
    job.checks.flatMap(({ check, by: hand, at }) => {
      const undoneBy = (checks.get(check)?.undoneBy ?? []).map(ground.key);
      const by = undoneBy.flatMap((key) => ofOthers(touched, key, job))[0];
      if (by === undefined) return [];
      const { said, job: other } = by;
      const did = `${said.thing} was ${said.verb} by ${handsOf(other)}`;
      return [disagree(at, `${check}: ticked by ${hand ?? handsOf(job)}, and ${did}`, other)];
    }),
  );
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
