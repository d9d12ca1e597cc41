// Where each part stands now: wanted, ordered, here, fitted or sent back; and how many are still to get.
import { keptWith } from '../../records/kept-with.ts';
import type { Fastener, Job, PartEntry } from '../../records/model.ts';
import type { Book } from '../book.ts';
import { plainName } from '../names.ts';

export interface PartLine {
  readonly job: Job;
  readonly part: PartEntry;
  /** One name for one part, whatever way it was written. */
  readonly key: string;
  /** How many of it this line speaks of. */
  readonly count: number;
  /** It is one of the maker's fasteners, whose size is known from there. */
  readonly fastener?: Fastener;
}

const over: ReadonlySet<PartEntry['state']> = new Set(['fitted', 'returned']);

/** Unfinished jobs: each of them has needs of its own, even for the same part. */
function isOpen(job: Job): boolean {
  return job.state !== 'done';
}

/** Does the later line say of the earlier one how it went on: another open job's own wish does not. */
function goesOn(earlier: PartLine, later: PartLine): boolean {
  if (earlier.job === later.job) return earlier.part.state !== later.part.state;
  const anothersWish = later.part.state === 'wanted' && isOpen(later.job) && isOpen(earlier.job);
  return !anothersWish;
}

/** What was asked for and is not covered by what was ordered or came since. */
function stillWanted(asked: PartLine, after: readonly PartLine[]): readonly PartLine[] {
  if (asked.part.state !== 'wanted' || after.some(({ part }) => over.has(part.state))) return [];
  const covered = Math.max(...after.map(({ count }) => count));
  return covered < asked.count ? [{ ...asked, count: asked.count - covered }] : [];
}

/** Kept for as long as the record is, which is never changed once read. */
const known = new WeakMap<PartEntry, PartLine>();

function lineOf({ job, part }: Book['parts'][number]): PartLine {
  const before = known.get(part);
  if (before?.job === job) return before;
  const made = { job, part, key: plainName(part.part), count: part.count };
  known.set(part, made);
  return made;
}

/** Lines that are still to come or to be fitted, in the order of the records; linear but for parts of one name. */
export function partLines({ parts }: Pick<Book, 'parts'>): readonly PartLine[] {
  return linesOf(parts);
}

const linesOf = keptWith((parts: Book['parts']): readonly PartLine[] => {
  if (parts.every(({ part }) => over.has(part.state))) return [];
  const byKey = new Map<string, PartLine[]>();
  const all = parts.map((one): PartLine => {
    const line = lineOf(one);
    const list = byKey.get(line.key);
    if (list === undefined) byKey.set(line.key, [line]);
    else list.push(line);
    return line;
  });
  return all.flatMap((line) => {
    if (over.has(line.part.state)) return [];
    const list = byKey.get(line.key) ?? [];
    const newest = list.at(-1);
    // What came is over with the newest line that goes on from it; only wishes are counted through.
    if (line.part.state !== 'wanted' && newest !== undefined && newest !== line && goesOn(line, newest)) return [];
    const after = list.slice(list.indexOf(line) + 1).filter((later) => goesOn(line, later));
    return after.length === 0 ? [line] : stillWanted(line, after);
  });
});
