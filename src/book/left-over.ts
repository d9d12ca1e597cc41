// Something is left over on the bench: the places it may belong to, the likeliest first.
import type { Quantity } from '../quantity/quantity.ts';
import type { Fastener, Job, LeftOverThing } from '../records/model.ts';
import type { Book, ClosedLine, OpenLine } from './book.ts';
import { plainName } from './names.ts';

/** What lies there: `M6x25` is a thread and a length, in metres. */
export interface LeftOver {
  readonly thread?: string;
  readonly length?: Quantity<'length'>;
  readonly count?: number;
  readonly name?: string;
}

export interface LikelyPlace {
  readonly fastener: Fastener;
  readonly line: OpenLine | ClosedLine;
  /** How many came off there, less those written as gone back. */
  readonly missing: number;
  readonly job: Job;
  /** Why it stands where it stands in the list, in words. */
  readonly because: readonly string[];
}

/** `M6x1.0`, `M6 × 1` and `m6` are the same as far as a left-over screw can be told. */
function threadKey(thread: string): string {
  const plain = thread.toLowerCase().replaceAll(/[\s×*]/gu, (mark) => (mark === ' ' ? '' : 'x'));
  const metric = /^m(\d+(?:\.\d+)?)/u.exec(plain);
  return metric === null ? plain : `m${String(Number(metric[1]))}`;
}

function sameLength(fastener: Fastener, length: Quantity<'length'>): boolean {
  const lengths = [fastener.length, ...fastener.lengths.map((one) => one.length)].filter((one) => one !== undefined);
  return lengths.some((one) => Math.abs(one.quantity - length) < 0.0006);
}

function isClosed(line: OpenLine | ClosedLine): line is ClosedLine {
  return 'by' in line;
}

function missingAt(line: OpenLine | ClosedLine, id: string): number {
  const key = plainName(id);
  const count = (list: OpenLine['entry']['fasteners']): number =>
    list.filter((one) => plainName(one.id) === key).reduce((total, one) => total + one.count, 0);
  const off = count(line.entry.fasteners);
  if (!isClosed(line)) return off;
  return line.by.fasteners.length === 0 ? 0 : off - count(line.by.fasteners);
}

/** The name of the fastener, or what locks it, has the word: a washer belongs under a nut that has one. */
function isNamed({ name, locking }: Fastener, word: string): boolean {
  return [name, locking ?? ''].some((text) => plainName(text).includes(plainName(word)));
}

/** Points for and against, with their words; a thread or length that differs rules a place out. */
function judge(
  found: LeftOver,
  fastener: Fastener,
  line: OpenLine | ClosedLine,
  missing: number,
): readonly string[] | undefined {
  const because: string[] = [];
  if (found.thread !== undefined) {
    if (fastener.thread !== undefined && threadKey(fastener.thread) !== threadKey(found.thread)) return undefined;
    because.push(fastener.thread === undefined ? 'thread not known' : 'same thread');
  }
  if (found.length !== undefined) {
    const known = fastener.length !== undefined || fastener.lengths.length > 0;
    if (known && !sameLength(fastener, found.length)) return undefined;
    because.push(known ? 'same length' : 'length not known');
  }
  const named = found.name !== undefined && isNamed(fastener, found.name);
  // Of a thing that is only named, every other place on the machine would be a guess.
  if (found.thread === undefined && found.length === undefined && !named) return undefined;
  if (named) because.push('same name');
  if (found.count !== undefined && missing === found.count) because.push('as many are missing');
  if (!isClosed(line)) because.push('still open');
  else if (missing > 0) because.push('fewer went back than came off');
  return because;
}

const weights: Readonly<Record<string, number>> = {
  'same thread': 8,
  'same length': 8,
  'fewer went back than came off': 6,
  'as many are missing': 4,
  'still open': 2,
  'same name': 2,
};

function weightOf(place: LikelyPlace): number {
  return place.because.reduce((total, word) => total + (weights[word] ?? 0), 0);
}

/**
 * Places from which such a fastener came off, open or closed, ranked by thread, length, count and date: first what fits
 * best, of those the newest work. A place whose thread or length is known to differ is left out.
 */
export function likelyPlaces(book: Book, found: LeftOver): readonly LikelyPlace[] {
  const byName = new Map([...book.fasteners.values()].map((one) => [plainName(one.id), one]));
  const places = [...book.off.open, ...book.off.closed].flatMap((line) =>
    line.entry.fasteners.flatMap((one): readonly LikelyPlace[] => {
      const fastener = byName.get(plainName(one.id));
      if (fastener === undefined) return [];
      const missing = missingAt(line, one.id);
      const because = judge(found, fastener, line, missing);
      return because === undefined
        ? []
        : [{ fastener, line, missing, job: isClosed(line) ? line.byJob : line.job, because }];
    }),
  );
  const ranked = places.toSorted((a, b) => weightOf(b) - weightOf(a) || (a.job.date.from < b.job.date.from ? 1 : -1));
  return newestOfEach(ranked);
}

/** One fastener that came off and went back in full time and again is one place: its newest work stands for all. */
function newestOfEach(ranked: readonly LikelyPlace[]): readonly LikelyPlace[] {
  const shown = new Set<string>();
  return ranked.filter(({ fastener, line, missing }) => {
    if (!isClosed(line) || missing > 0) return true;
    if (shown.has(fastener.id)) return false;
    shown.add(fastener.id);
    return true;
  });
}

/** What lies on the bench by the newest record that says so; a later `left over: none` takes it away. */
export function leftOnBench(book: Book): { readonly job: Job; readonly things: readonly LeftOverThing[] } | undefined {
  const job = book.records.jobs.findLast((one) => one.state !== 'planned' && one.leftOver !== undefined);
  return job?.leftOver === undefined || job.leftOver.length === 0 ? undefined : { job, things: job.leftOver };
}

/** A written thing as it is looked for. */
export function asFound({ name, thread, length, count }: LeftOverThing): LeftOver {
  return {
    ...(name === undefined ? {} : { name }),
    ...(thread === undefined ? {} : { thread }),
    ...(length === undefined ? {} : { length: length.quantity }),
    ...(count === undefined ? {} : { count }),
  };
}
