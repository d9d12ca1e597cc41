// What is off, loose, empty, disconnected, open, sent out or fitted for the time being; and what closed it.
import type { Job, WorkEntry } from '../records/model.ts';
import type { ClosedLine, OffBook, OpenLine } from './book.ts';
import { bagLines } from './bags.ts';
import type { Namer } from './names.ts';
import type { OffState } from './off-states.ts';
import { closesState, offStates, opensState } from './off-states.ts';

/** Entries that close nothing, and lines opened twice: not wrong, but worth a look. */
export interface OffWork {
  readonly off: OffBook;
  readonly putBackNeverOff: readonly { readonly job: Job; readonly entry: WorkEntry }[];
  readonly takenTwice: readonly { readonly job: Job; readonly entry: WorkEntry; readonly first: OpenLine }[];
}

interface Open {
  readonly line: OpenLine;
  /** Which of all entries opened it. */
  readonly order: number;
  /** How many are still off; undefined when nobody counted. */
  readonly left?: number;
}

/** Lines of one state by the key of their thing; a line leaves its list when it is closed. */
type Shelf = Map<string, Open[]>;

/** Two lines of one name are one piece when bag and place say nothing else. */
function onePiece(lines: readonly Open[]): boolean {
  const [first, ...others] = lines;
  return others.every(
    ({ line }) => line.entry.bag === first?.line.entry.bag && line.entry.where === first?.line.entry.where,
  );
}

/** Which of the open lines an entry speaks of: those of its bag or place when it names one. */
function meant(lines: readonly Open[], entry: WorkEntry): readonly Open[] {
  const bag = entry.fromBag;
  const byBag = bag === undefined ? lines : lines.filter(({ line }) => line.entry.bag === bag);
  const pool = byBag.length === 0 ? lines : byBag;
  const byPlace = entry.where === undefined ? pool : pool.filter(({ line }) => line.entry.where === entry.where);
  const found = byPlace.length === 0 ? pool : byPlace;
  return onePiece(found) ? found : found.slice(0, 1);
}

/** Takes a count off the lines, oldest first; the rest of a line stays open, and so does every line after it. */
function takeCount(lines: readonly Open[], count: number): ReadonlyMap<Open, number> {
  const rest = new Map<Open, number>();
  let owed = count;
  for (const one of lines) {
    if (owed <= 0) break;
    const had = one.left ?? owed;
    rest.set(one, Math.max(0, had - owed));
    owed -= had;
  }
  return rest;
}

/** What is left of each line the entry speaks of: 0 closes it. */
function leftAfter(lines: readonly Open[], entry: WorkEntry): ReadonlyMap<Open, number> {
  const spoken = meant(lines, entry);
  if (entry.count !== undefined && spoken.some((one) => one.left !== undefined)) return takeCount(spoken, entry.count);
  return new Map(spoken.map((one) => [one, 0]));
}

function closedLine({ line: { state, entry, job, since } }: Open, by: WorkEntry, byJob: Job): ClosedLine {
  return { state, entry, job, since, by, byJob };
}

/** Closes what the entry closes; false when nothing was open. */
function close(shelf: Shelf, at: string, entry: WorkEntry, job: Job, closed: ClosedLine[]): boolean {
  const lines = shelf.get(at);
  const only = lines?.[0];
  if (lines === undefined || only === undefined) return false;
  // One line and no count to take off it: nearly every entry of a log.
  if (lines.length === 1 && (entry.count === undefined || only.left === undefined)) {
    closed.push(closedLine(only, entry, job));
    shelf.delete(at);
    return true;
  }
  const left = leftAfter(lines, entry);
  const still: Open[] = [];
  for (const one of lines) {
    const rest = left.get(one);
    if (rest === 0) closed.push(closedLine(one, entry, job));
    else still.push(rest === undefined ? one : { ...one, left: rest });
  }
  if (still.length === 0) shelf.delete(at);
  else shelf.set(at, still);
  return true;
}

/** Verbs that are also said of something that was never off: a new part, a top-up, a re-torque. */
const alone: ReadonlySet<string> = new Set(['replaced', 'lost', 'filled', 'tightened']);

function stateLeft(jobs: readonly Job[]): Pick<OffBook, 'stateLeft' | 'next'> {
  const written = jobs.findLast((job) => job.stateLeft.length > 0);
  // A machine that has been ridden since is not as it was left.
  const ridden = written !== undefined && jobs.slice(jobs.indexOf(written) + 1).some(({ ride }) => ride !== undefined);
  const newest = ridden ? undefined : written;
  const last = jobs.findLast((job) => job.next !== undefined);
  // What was written as next has been gone on with once a later record continues it.
  const next = jobs.some((job) => last !== undefined && job.continues === last.id) ? undefined : last;
  const words = newest === undefined ? [] : newest.stateLeft.map((text) => ({ job: newest, text }));
  return { stateLeft: words, ...(next?.next === undefined ? {} : { next: { job: next, text: next.next } }) };
}

/**
 * Runs through the entries in order. A closing entry closes the lines of its thing and state: all of them when they are
 * one piece, else those of its bag or place, else the oldest; a count closes so many. Linear in the entries.
 */
export function offAndOn(jobs: readonly Job[], key: Namer): OffWork {
  const shelves = new Map<OffState, Shelf>(offStates.map((state) => [state, new Map()]));
  const closed: ClosedLine[] = [];
  const putBackNeverOff: { job: Job; entry: WorkEntry }[] = [];
  const takenTwice: { job: Job; entry: WorkEntry; first: OpenLine }[] = [];
  let order = 0;
  for (const job of jobs) {
    for (const entry of job.work) {
      order += 1;
      const thing = key(entry.thing);
      const ends = closesState(entry.verb);
      const ended = ends === undefined ? undefined : shelves.get(ends);
      const found = ended === undefined || close(ended, thing, entry, job, closed);
      if (!found && !alone.has(entry.verb)) putBackNeverOff.push({ job, entry });
      const state = opensState(entry.verb);
      const shelf = state === undefined ? undefined : shelves.get(state);
      if (state === undefined || shelf === undefined) continue;
      const before = shelf.get(thing);
      const line = { state, entry, job, since: job.date.from };
      const one: Open = entry.count === undefined ? { line, order } : { line, order, left: entry.count };
      const last = before?.at(-1);
      if (last !== undefined && entry.verb !== 'lost' && onePiece([last, one]))
        takenTwice.push({ job, entry, first: last.line });
      if (before === undefined) shelf.set(thing, [one]);
      else before.push(one);
    }
  }
  const open = [...shelves.values()].flatMap((shelf) => [...shelf.values()].flat());
  const sorted = open
    .toSorted((a, b) => a.order - b.order)
    .map(({ line, left }) => (left === undefined || left === line.entry.count ? line : { ...line, remaining: left }));
  const off = { open: sorted, closed, bags: bagLines(sorted, closed), ...stateLeft(jobs) };
  return { off, putBackNeverOff, takenTwice };
}
