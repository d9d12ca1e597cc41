// What ages while a machine stands, ridden or not: what was filled and when, and the joints that were opened.
import type { Day } from '../quantity/day.ts';
import { monthsBetween } from '../quantity/day-arithmetic.ts';
import type { Job } from '../records/model.ts';
import type { Book } from './book.ts';
import { hasHappened } from './in-order.ts';
import { hasWords, plainName, remembered } from './names.ts';

const fuelWords = ['fuel', 'petrol', 'gasoline', 'tank'];
/** How long a filling is good for; common practice, where the maker's schedule does not say it. */
const fillings: readonly { readonly words: readonly string[]; readonly months: number; readonly why: string }[] = [
  { words: ['brake fluid'], months: 24, why: 'draws water' },
  { words: fuelWords, months: 6, why: 'goes stale, and gums the jets' },
  { words: ['oil'], months: 12, why: 'holds water and acid once it has run' },
];

/** Joints whose gasket is not used twice (common practice). */
const joints: readonly string[] = [
  'cylinder head',
  'head',
  'barrel',
  'cylinder',
  'crankcase',
  'clutch cover',
  'side cover',
  'sump',
  'carburettor bowl',
  'exhaust',
];

export interface Filling {
  readonly thing: string;
  readonly job: Job;
  readonly day: Day;
  /** Whole months since. */
  readonly months: number;
  /** After so many months it is old, and why; common practice. */
  readonly goodFor: number;
  readonly why: string;
}

const isFuel = remembered((thing: string): boolean => fuelWords.some((word) => hasWords(thing, word)));

/** The last filling of everything that is full by the records and has become old by today; a ride means that fuel was bought. */
export function oldFillings(book: Book): readonly Filling[] {
  const last = new Map<string, { readonly thing: string; readonly job: Job } | undefined>();
  for (const job of book.records.jobs.filter(hasHappened)) {
    for (const { verb, thing } of job.work) {
      if (verb === 'filled') last.set(plainName(thing), { thing, job });
      if (verb === 'drained') last.set(plainName(thing), undefined);
    }
    if (job.ride === undefined) continue;
    for (const [name, one] of last) if (one !== undefined && isFuel(one.thing)) last.set(name, { ...one, job });
  }
  return [...last.values()].flatMap((one): readonly Filling[] => {
    const kind = fillings.find(({ words }) => one !== undefined && words.some((word) => hasWords(one.thing, word)));
    if (one === undefined || kind === undefined) return [];
    const day = one.job.date.from;
    const months = monthsBetween(day, book.today);
    return months < kind.months ? [] : [{ ...one, day, months, goodFor: kind.months, why: kind.why }];
  });
}

/** True while work is left off half way: a record put aside, under way or waiting that no later one continues. */
export function isLeftHalfWay(book: Book): boolean {
  const continued = new Set(book.records.jobs.filter(hasHappened).map((job) => job.continues));
  return book.records.jobs.some(
    ({ id, state }) => (state === 'put aside' || state === 'under way' || state === 'waiting') && !continued.has(id),
  );
}

/** Things that are off or open, and that need a new gasket when they go back; each once. */
export function openJoints(book: Book): readonly string[] {
  const names = book.off.open
    .filter(({ state }) => state === 'off' || state === 'open')
    .map(({ entry }) => entry.thing)
    .filter((thing) => joints.some((joint) => plainName(thing) === joint || plainName(thing).endsWith(` ${joint}`)));
  return [...new Set(names)];
}
