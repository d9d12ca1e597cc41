// The words of the records that go into a copy for the next owner: each with its place; what is marked private is left out.
import type { Place } from '../problem/problem.ts';
import type { Job, Records } from '../records/model.ts';
import { keptFlat } from '../records/runs.ts';

export interface OpenText {
  readonly text: string;
  readonly at: Place;
  /** Line of the file on which a running text begins; without it the place says it all. */
  readonly line?: number;
  /** Names who worked, signed or looked: a word alone is a person there. */
  readonly hand?: true;
}

/** Tells one text of a record; its place is the key below `at`, or of the record itself. */
type Tell = (text: string | undefined, at: Place | undefined, key: string, index?: number) => void;

/** The words of one record, each with its place. */
export function wordsOfJob(job: Job): readonly OpenText[] {
  const { file } = job;
  const found: OpenText[] = [];
  const place: (at: Place | undefined, key: string, index?: number) => Place = (at, key, index) => {
    const path = [...(at?.path ?? []), key];
    return { ...at, file, path: index === undefined ? path : [...path, index] };
  };
  tellWords(
    job,
    (text, at, key, index) => {
      if (text !== undefined && text !== '') found.push({ text, at: place(at, key, index) });
    },
    (text, at, key, index) => {
      if (text !== undefined && text !== '') found.push({ text, at: place(at, key, index), hand: true });
    },
  );
  if (job.body.trim() !== '') found.push({ text: job.body, at: { file, path: [] }, line: job.bodyLine });
  return found;
}

/** All words of one record in one text, to be looked over at once: most hold nothing, and need no places. */
export function allWordsOfJob(job: Job): string {
  let all = '';
  const tell: Tell = (text) => {
    if (text !== undefined) all += text + '\n';
  };
  tellWords(job, tell, tell);
  return all + job.body;
}

function tellWords(job: Job, add: Tell, hand: Tell): void {
  add(job.title, undefined, 'title');
  add(job.purpose, undefined, 'for');
  add(job.waitingFor, undefined, 'state');
  add(job.next, undefined, 'next');
  job.hands.forEach((one, index) => hand(one, undefined, 'hands', index));
  job.stateLeft.forEach((one, index) => add(one, undefined, 'state left', index));
  for (const { thing, verb, to, where, note, at } of job.work) {
    add(thing, at, verb);
    add(to, at, 'to');
    add(where, at, 'where');
    add(note, at, 'note');
  }
  for (const { note, at } of job.readings) add(note, at, 'note');
  for (const { part, from, note, at } of job.parts) {
    add(part, at, 'part');
    add(from, at, 'from');
    add(note, at, 'note');
  }
  for (const { saw, became, at } of job.findings) {
    add(saw, at, 'saw');
    add(became, at, 'became');
  }
  tellHands(job, add, hand);
  for (const { why, at } of job.corrections) add(why, at, 'why');
  for (const one of job.money) add(one.for, one.at, 'for');
  for (const one of job.photos) if (!one.private) add(one.caption, one.at, 'caption');
  job.runLog.forEach((one, index) => add(one.saw, { file: job.file, path: ['run log', index] }, 'saw'));
  const ride: Place = { file: job.file, path: ['ride'] };
  add(job.ride?.weather, ride, 'weather');
  add(job.ride?.whatHappened, ride, 'what happened');
}

function tellHands(job: Job, add: Tell, hand: Tell): void {
  for (const { by, checkedBy, value, at } of job.checks) {
    hand(by, at, 'by');
    hand(checkedBy, at, 'checked by');
    add(value, at, 'value');
  }
  for (const { by, why, at } of [...(job.releases ?? []), ...(job.answers ?? [])]) {
    hand(by, at, 'by');
    add(why, at, 'why');
  }
  hand(job.signed?.by, { file: job.file, path: ['signed'] }, 'by');
}

/** A value marked private stands one key below the place that it is the value of. */
function placeWords({ file, path }: Place): string {
  return [file, ...path].join('\n');
}

/** The words of these records, the story last. A value marked private by itself is not among them. */
export function openTexts(records: Records, jobs: readonly Job[]): readonly OpenText[] {
  const { story } = records;
  const open = withoutKept(records, jobs.flatMap(wordsOfJob));
  return story === undefined ? open : [...open, { text: story.body, at: { file: story.file, path: [] } }];
}

function withoutKept({ kept = [] }: Records, words: readonly OpenText[]): readonly OpenText[] {
  if (kept.length === 0) return words;
  const closed = new Set(kept.map((one) => placeWords({ ...one, path: one.path.slice(0, -1) })));
  return words.filter(({ at }) => !closed.has(placeWords(at)));
}

/** Everybody who worked, signed, looked or let pass, each with the first place; a record's own hands are few. */
export function handsNamed(records: Records, jobs: readonly Job[]): readonly OpenText[] {
  return withoutKept(records, handsWithNames(jobs));
}

const handsWithNames = keptFlat((job: Job): readonly OpenText[] =>
  namesSomebody(job) ? wordsOfJob(job).filter((one) => one.hand === true) : [],
);

/** A capital letter in a hand: what they are is written small. */
function namesSomebody({ hands, checks, signed, releases = [], answers = [] }: Job): boolean {
  const isCapital = (hand: string | undefined): boolean => hand !== undefined && /\p{Lu}/u.test(hand);
  return (
    hands.some(isCapital) ||
    isCapital(signed?.by) ||
    checks.some(({ by, checkedBy }) => isCapital(by) || isCapital(checkedBy)) ||
    releases.some(({ by }) => isCapital(by)) ||
    answers.some(({ by }) => isCapital(by))
  );
}
