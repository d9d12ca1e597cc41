// The lines of `work` that are still to be done in a job: what comes off, and what goes back after it.
import type { Job, Verb, WorkEntry } from '../records/model.ts';
import type { Book } from './book.ts';
import { nameInRecord } from './own-words.ts';
import { plainName } from './names.ts';
import { closesState, opensState } from './off-states.ts';

/** The verb that ends what a verb begins. */
const ends: Partial<Readonly<Record<Verb, Verb>>> = {
  removed: 'refitted',
  loosened: 'tightened',
  drained: 'filled',
  disconnected: 'connected',
  opened: 'closed',
  'sent out': 'come back',
  'fitted temporarily': 'taken away',
};

export interface PlannedLine {
  readonly entry: WorkEntry;
  /** Ids of its fasteners: those it names, else those that the maker's data holds the part with. */
  readonly fasteners: readonly string[];
  /** True of a line that the record does not write, and that follows from what comes off. */
  readonly follows: boolean;
  /** Done already, in a job that has begun; it stays on the sheet for what follows from it. */
  readonly done: boolean;
}

/** The verb that ends what this one begins; undefined where it begins nothing. */
export function endOf(verb: Verb): Verb | undefined {
  return ends[verb];
}

/** Lines of a planned job in the order of the record; of one that has begun, what is still to be done and what is still to go back. */
export function plannedLines(
  book: Book,
  job: Job,
): { readonly away: readonly PlannedLine[]; readonly back: readonly PlannedLine[] } {
  const planned = job.state === 'planned';
  if (!planned && job.state !== 'under way' && job.state !== 'waiting') return { away: [], back: [] };
  const toDo = planned ? job.work : (job.toDo ?? []);
  const done = planned ? [] : begunHere(book, job);
  const all = [...job.work, ...(job.toDo ?? [])];
  const isBack = (entry: WorkEntry): boolean => entry.verb !== 'lost' && closesState(entry.verb) !== undefined;
  const closed = (entry: WorkEntry): boolean =>
    all.some((one) => isBack(one) && closesState(one.verb) === opensState(entry.verb) && one.thing === entry.thing);
  const line = (entry: WorkEntry, follows: boolean, isDone = false): PlannedLine => ({
    entry,
    fasteners: fastenersOf(book, entry),
    follows,
    done: isDone,
  });
  const away = [
    ...done.filter((entry) => !closed(entry)).map((entry) => line(entry, false, true)),
    ...toDo.filter((entry) => !isBack(entry)).map((entry) => line(entry, false)),
  ];
  const following = away.flatMap(({ entry }): readonly PlannedLine[] => {
    const end = ends[entry.verb];
    return end === undefined || closed(entry) ? [] : [line({ ...entry, verb: end }, true)];
  });
  return { away, back: [...toDo.filter(isBack).map((entry) => line(entry, false)), ...following] };
}

/** What a job that has begun took off by lines of its own; parts of its procedures have ticks of their own. */
function begunHere(book: Book, job: Job): readonly WorkEntry[] {
  const steps = job.procedures.flatMap((id) => book.content.procedures.get(id)?.steps ?? []);
  const own = new Set(steps.flatMap((step) => step.off).map((part) => nameInRecord(book.records.maker, part)));
  return job.work.filter((entry) => ends[entry.verb] !== undefined && !own.has(entry.thing));
}

function fastenersOf(book: Book, entry: WorkEntry): readonly string[] {
  const ofPart = [...book.fasteners.values()].filter((one) => plainName(one.of ?? '') === plainName(entry.thing));
  const own = book.fasteners.has(entry.thing) ? [entry.thing] : [];
  const named = [...entry.fasteners.map((one) => one.id), ...own];
  return named.length > 0 ? named : ofPart.map((one) => one.id);
}
