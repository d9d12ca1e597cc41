// Which steps of the order are on record: proved by their check, or else written down in a record that has happened.
import type { OrderStep } from '../records/content-model.ts';
import type { Job, Verb } from '../records/model.ts';
import type { Book, CheckState } from './book.ts';
import { makeReach, touchByKind, touchBySetting, touchByWork, type Touch } from './disturbance.ts';
import { layGround } from './ground.ts';
import type { Namer } from './names.ts';

export interface OnRecord {
  /** The record that did it last; absent when none did, or a later one undid it. */
  readonly done?: Job;
  /** Why an earlier proof does not count, in words. */
  readonly but?: string;
}

/** What was put back, closed, filled or set stands; what was taken off does not. */
const putsBack: ReadonlySet<Verb> = new Set(['refitted', 'replaced', 'tightened', 'filled', 'connected', 'closed']);

/** What a record did, in the words that a step is named by. */
function doneIn(job: Job): readonly string[] {
  return [
    job.kind,
    ...(job.ride === undefined ? [] : ['ride', ...(job.ride.where === 'private land' ? [] : ['road'])]),
    ...(job.heatCycles > 0 ? ['heat cycle'] : []),
    ...job.procedures,
    ...job.services,
    ...job.readings.map(({ item }) => item),
  ];
}

interface Walked {
  /** Key of a word to the steps that it is. */
  readonly does: ReadonlyMap<string, readonly string[]>;
  /** Key of a thing to the steps that its being touched undoes: their own words among them. */
  readonly undoes: ReadonlyMap<string, readonly string[]>;
}

function index(steps: readonly OrderStep[], key: Namer, words: (step: OrderStep) => readonly string[]): Walked['does'] {
  const found = new Map<string, string[]>();
  for (const step of steps) {
    for (const word of new Set(words(step).map(key))) found.set(word, [...(found.get(word) ?? []), step.id]);
  }
  return found;
}

/** Every step that a record did and nothing undid since; what a later record touched is to be done again. Linear in the records. */
function lastDone(book: Book, steps: readonly OrderStep[], key: Namer): ReadonlyMap<string, OnRecord> {
  const ground = layGround(book.records, book.content, book.today);
  const reach = makeReach(ground);
  const does = index(steps, key, (step) => [step.id, ...step.by]);
  const undoes = index(steps, key, (step) => [...step.by, ...(step.undoneBy ?? [])]);
  const last = new Map<string, OnRecord>();
  const undo = (thing: string, what: string): void => {
    for (const id of undoes.get(thing) ?? [])
      if (last.get(id)?.done !== undefined) last.set(id, { but: `undone by ${what}` });
  };
  for (const job of ground.jobs) {
    const touch: Touch = (keys, thing, how) => {
      for (const one of keys) undo(one, thing + how);
    };
    touchByKind(job, ground, touch);
    touchByWork(job, ground, reach, touch);
    for (const reading of job.readings) touchBySetting(reading, ground, reach, touch);
    const things = job.work.filter(({ verb }) => putsBack.has(verb)).map(({ thing }) => thing);
    for (const word of [...doneIn(job), ...things])
      for (const id of does.get(key(word)) ?? []) last.set(id, { done: job });
    for (const { verb, thing } of job.work)
      if (!putsBack.has(verb) && !isBackAgain(job, thing, key)) undo(key(thing), `${thing} ${verb}`);
  }
  return last;
}

/** Put back in the record that took it off. */
function isBackAgain(job: Job, thing: string, key: Namer): boolean {
  return job.work.findLast((entry) => key(entry.thing) === key(thing) && putsBack.has(entry.verb)) !== undefined;
}

/** A check decides for its step: proved is done; anything else is not, whatever records say besides. */
function byChecks(states: readonly CheckState[]): OnRecord {
  const bad = states.find((one) => one.state !== 'proved');
  if (bad === undefined) {
    const job = states[0]?.by?.job;
    return job === undefined ? {} : { done: job };
  }
  if (bad.state !== 'undone') return {};
  return { but: bad.undoneBy === undefined ? (bad.why ?? 'undone') : `undone by ${bad.undoneBy.what}` };
}

/** Every step of this machine with what is on record of it. */
export function stepsOnRecord(book: Book, steps: readonly OrderStep[], key: Namer): ReadonlyMap<string, OnRecord> {
  const checks = new Map(book.holds.flatMap((hold) => hold.checks).map((state) => [state.check.id, state]));
  const last = lastDone(book, steps, key);
  return new Map(
    steps.map((step): readonly [string, OnRecord] => {
      const known = step.by.flatMap((word) => checks.get(word) ?? []);
      const states = known.filter((one) => one.state !== 'not for this machine' && one.state !== 'each time');
      if (states.length > 0) return [step.id, byChecks(states)];
      return [step.id, last.get(step.id) ?? {}];
    }),
  );
}
