// Which steps of the order are on record: proved by their check, or else written down in a record that has happened.
import type { OrderStep } from '../records/content-model.ts';
import type { Job, Verb } from '../records/model.ts';
import type { Book, CheckState } from './book.ts';
import { hasHappened } from './in-order.ts';
import type { Namer } from './names.ts';

export interface OnRecord {
  /** The record that did it last; absent when none did, or a later one undid it. */
  readonly done?: Job;
  /** Why an earlier proof does not count, in words. */
  readonly but?: string;
}

/** What was put back, closed, filled or set stands; what was taken off does not. */
const putsBack: ReadonlySet<Verb> = new Set(['refitted', 'replaced', 'tightened', 'filled', 'connected', 'closed']);

/** From every thing that a record did to the last record that did it; from what it took off again to none. */
function lastDone(book: Book, key: Namer): ReadonlyMap<string, Job | undefined> {
  const last = new Map<string, Job | undefined>();
  for (const job of book.records.jobs.filter(hasHappened)) {
    const done = [
      job.kind,
      ...(job.ride === undefined ? [] : ['ride', ...(job.ride.where === 'private land' ? [] : ['road'])]),
      ...(job.heatCycles > 0 ? ['heat cycle'] : []),
      ...job.procedures,
      ...job.services,
      ...job.readings.map(({ item }) => item),
    ];
    for (const word of done) last.set(key(word), job);
    for (const { verb, thing } of job.work) last.set(key(thing), putsBack.has(verb) ? job : undefined);
  }
  return last;
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
  const last = lastDone(book, key);
  return new Map(
    steps.map((step): readonly [string, OnRecord] => {
      const known = step.by.flatMap((word) => checks.get(word) ?? []);
      const states = known.filter((one) => one.state !== 'not for this machine' && one.state !== 'each time');
      if (states.length > 0) return [step.id, byChecks(states)];
      const done = [step.id, ...step.by].map((word) => last.get(key(word))).find((job) => job !== undefined);
      return [step.id, done === undefined ? {} : { done }];
    }),
  );
}
