// The words of the records that go into a copy for the next owner: each with its place; what is marked private is left out.
import type { Place } from '../problem/problem.ts';
import type { Job, Records } from '../records/model.ts';
import { keptByJob } from './kept-by-job.ts';

export interface OpenText {
  readonly text: string;
  readonly at: Place;
  /** Line of the file on which a running text begins; without it the place says it all. */
  readonly line?: number;
  /** Names who worked, signed or looked: a word alone is a person there. */
  readonly hand?: true;
}

/** The words of one record, and all of them in one text to be looked over at once. */
export const wordsOfJob = keptByJob((job): { readonly words: readonly OpenText[]; readonly all: string } => {
  const words = wordsIn(job);
  return { words, all: words.map(({ text }) => text).join('\n') };
});

function wordsIn(job: Job): readonly OpenText[] {
  const { file } = job;
  const found: OpenText[] = [];
  const add = (text: string | undefined, at: Place): void => {
    if (text !== undefined && text !== '') found.push({ text, at });
  };
  const hand = (text: string | undefined, at: Place): void => {
    if (text !== undefined && text !== '') found.push({ text, at, hand: true });
  };
  const key = (...path: (string | number)[]): Place => ({ file, path });
  const under = (at: Place, name: string): Place => ({ ...at, path: [...at.path, name] });
  add(job.title, key('title'));
  add(job.purpose, key('for'));
  add(job.waitingFor, key('state'));
  add(job.next, key('next'));
  job.hands.forEach((one, index) => hand(one, key('hands', index)));
  job.stateLeft.forEach((one, index) => add(one, key('state left', index)));
  for (const { thing, verb, to, where, note, at } of job.work) {
    for (const [name, text] of [
      [verb, thing],
      ['to', to],
      ['where', where],
      ['note', note],
    ] as const)
      add(text, under(at, name));
  }
  for (const { note, at } of job.readings) add(note, under(at, 'note'));
  for (const { part, from, note, at } of job.parts) {
    for (const [name, text] of [
      ['part', part],
      ['from', from],
      ['note', note],
    ] as const)
      add(text, under(at, name));
  }
  for (const { saw, became, at } of job.findings) {
    add(saw, under(at, 'saw'));
    add(became, under(at, 'became'));
  }
  addHands(job, hand, add);
  for (const one of job.corrections) add(one.why, under(one.at, 'why'));
  for (const one of job.money) add(one.for, under(one.at, 'for'));
  for (const one of job.photos) if (!one.private) add(one.caption, under(one.at, 'caption'));
  job.runLog.forEach((one, index) => add(one.saw, key('run log', index, 'saw')));
  add(job.ride?.weather, key('ride', 'weather'));
  add(job.ride?.whatHappened, key('ride', 'what happened'));
  if (job.body.trim() !== '') found.push({ text: job.body, at: { file, path: [] }, line: job.bodyLine });
  return found;
}

type Add = (text: string | undefined, at: Place) => void;

function addHands(job: Job, hand: Add, add: Add): void {
  for (const { by, checkedBy, value, at } of job.checks) {
    hand(by, { ...at, path: [...at.path, 'by'] });
    hand(checkedBy, { ...at, path: [...at.path, 'checked by'] });
    add(value, { ...at, path: [...at.path, 'value'] });
  }
  for (const { by, why, at } of [...(job.releases ?? []), ...(job.answers ?? [])]) {
    hand(by, { ...at, path: [...at.path, 'by'] });
    add(why, { ...at, path: [...at.path, 'why'] });
  }
  hand(job.signed?.by, { file: job.file, path: ['signed', 'by'] });
}

/** A value marked private stands one key below the place that it is the value of. */
function placeWords({ file, path }: Place): string {
  return [file, ...path].join('\n');
}

/**
 * The words of the records that `worthIt` says yes to, the story last; it is asked of all words of a record at once. A value marked
 * private by itself is not among them.
 */
export function openTexts(
  records: Records,
  jobs: readonly Job[],
  key: (thing: string) => string,
  worthIt: (all: string, job: Job) => boolean,
): readonly OpenText[] {
  const { story } = records;
  const found: OpenText[] = [];
  for (const job of jobs) {
    const { words, all } = wordsOfJob(job, key);
    if (worthIt(all, job)) found.push(...words);
  }
  const open = withoutKept(records, found);
  return story === undefined ? open : [...open, { text: story.body, at: { file: story.file, path: [] } }];
}

function withoutKept({ kept = [] }: Records, words: readonly OpenText[]): readonly OpenText[] {
  if (kept.length === 0) return words;
  const closed = new Set(kept.map((one) => placeWords({ ...one, path: one.path.slice(0, -1) })));
  return words.filter(({ at }) => !closed.has(placeWords(at)));
}

/** Everybody who worked, signed, looked or let pass, each with the first place; a record's own hands are few. */
export function handsNamed(
  records: Records,
  jobs: readonly Job[],
  key: (thing: string) => string,
): readonly OpenText[] {
  const named = jobs.filter((job) => namesSomebody(job, key)).flatMap((job) => wordsOfJob(job, key).words);
  return withoutKept(
    records,
    named.filter((one) => one.hand === true),
  );
}

/** A capital letter in a hand: what they are is written small. */
const namesSomebody = keptByJob(({ hands, checks, signed, releases = [], answers = [] }): boolean => {
  const isCapital = (hand: string | undefined): boolean => hand !== undefined && /\p{Lu}/u.test(hand);
  return (
    hands.some(isCapital) ||
    isCapital(signed?.by) ||
    checks.some(({ by, checkedBy }) => isCapital(by) || isCapital(checkedBy)) ||
    releases.some(({ by }) => isCapital(by)) ||
    answers.some(({ by }) => isCapital(by))
  );
});
