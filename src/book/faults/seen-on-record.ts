// What the records have seen already: tests written down, findings still open, the newest run, readings, checks that are proved.
import { silent } from '../../calc/faults/odds-table.ts';
import type { Day } from '../../quantity/day.ts';
import type { FaultOutcome, FaultTables, FaultTest } from '../../records/fault-model.ts';
import type { Finding, Job } from '../../records/model.ts';
import type { Book } from '../book.ts';
import { nameOutcome } from './fault-names.ts';
import { readingsSay } from './readings-say.ts';
import { hasRun, type WorkedOn } from './worked-on.ts';

/** An outcome with where it stands in the records. */
export interface SeenOnRecord {
  readonly test: FaultTest;
  readonly outcome?: FaultOutcome;
  readonly day: Day;
  readonly job?: Job;
  /** The words it was taken from. */
  readonly words: string;
  /** Found before the work of its record, or left after it. */
  readonly side: 'found' | 'left';
  /** Written as a test of the record, not taken from its words. */
  readonly written?: boolean;
}

/** `spark=none` of something seen. */
export function refOf({ test, outcome }: Pick<SeenOnRecord, 'test' | 'outcome'>): string {
  return `${test.id}=${outcome?.saw ?? silent}`;
}

/**
 * The newest outcome of each test on record, those left out that later work has overtaken: what cures or moves a cause asks for
 * the same look again. `from` bounds how far back is looked.
 */
export function seenOnRecord(
  book: Book,
  faults: FaultTables,
  jobs: readonly Job[],
  worked: WorkedOn,
  from: Day,
): readonly SeenOnRecord[] {
  const recent = jobs.filter((job) => job.date.to >= from);
  const newestRun = recent.findLast((job) => job.runLog.length > 0 || job.ride !== undefined);
  const ran = recent.findLast(hasRun);
  const all = [
    ...recent.flatMap((job) => ofJob(job, faults, job === newestRun)),
    ...readingsSay(book, faults, from),
    ...checksSay(book, faults, from),
  ].toSorted((a, b) => (a.day < b.day ? -1 : Number(a.day > b.day)));
  const standing = all.filter((one) => !overtaken(one, worked) && !(isClean(one) && ranSince(one, ran)));
  const newest = new Map<string, SeenOnRecord>();
  for (const one of standing) newest.set(one.test.id, one);
  return [...newest.values()];
}

/** Work on what it speaks for, later or in the same record after it was found, makes it history. */
function overtaken({ outcome, day, side }: SeenOnRecord, worked: WorkedOn): boolean {
  if (outcome === undefined) return false;
  const speaksFor = [...outcome.shows, ...outcome.stronglyFor];
  return speaksFor.some((cause) => worked.since(cause, day, side === 'left'));
}

/** It only clears causes. Such a look is good until the engine has run again: what is wrong now may have come since. */
function isClean({ outcome }: SeenOnRecord): boolean {
  if (outcome === undefined) return true;
  return outcome.shows.length + outcome.stronglyFor.length + outcome.for.length === 0;
}

function ranSince({ day, job }: SeenOnRecord, ran: Job | undefined): boolean {
  return ran !== undefined && job !== ran && ran.date.to >= day;
}

function ofJob(job: Job, faults: FaultTables, ran: boolean): readonly SeenOnRecord[] {
  const day = job.date.to;
  const base = { day, job };
  const written = (job.tests ?? []).flatMap(({ test, saw, note }): readonly SeenOnRecord[] => {
    const named = nameOutcome(faults.tests, test, saw);
    if (!named.ok) return [];
    const words = note ?? named.value.outcome?.words ?? 'told nothing';
    return [{ ...named.value, ...base, words, side: 'left', written: true }];
  });
  const told = job.findings
    .filter(isOpen)
    .flatMap(({ saw }) => saidBy(saw, faults).map((one) => ({ ...one, words: saw })));
  const log = ran ? job.runLog.flatMap(({ saw }) => saidBy(saw, faults).map((one) => ({ ...one, words: saw }))) : [];
  const ride = ran
    ? saidBy(job.ride?.whatHappened ?? '', faults).map((one) => ({ ...one, words: job.ride?.whatHappened ?? '' }))
    : [];
  return [...[...told, ...log, ...ride].map((one): SeenOnRecord => ({ ...one, ...base, side: 'found' })), ...written];
}

/** A finding that was answered or closed is history. */
function isOpen({ became }: Finding): boolean {
  return !/^(?:answered|closed)/iu.test(became.trim());
}

/** Outcomes whose words stand in a text, each test once. */
function saidBy(text: string, { tests }: FaultTables): readonly Pick<SeenOnRecord, 'test' | 'outcome'>[] {
  const plain = ` ${text.toLowerCase().replaceAll(/[^\p{L}\p{N}-]+/gu, ' ')} `;
  return tests.flatMap((test) => {
    const outcome = test.outcomes.findLast((one) => one.phrases.some((phrase) => plain.includes(` ${phrase} `)));
    return outcome === undefined ? [] : [{ test, outcome }];
  });
}

/** Checks that are proved now say what their outcome says. */
function checksSay(book: Book, { tests }: FaultTables, from: Day): readonly SeenOnRecord[] {
  const states = new Map(book.holds.flatMap((hold) => hold.checks.map((state) => [state.check.id, state] as const)));
  return tests.flatMap((test) =>
    test.outcomes.flatMap((outcome): readonly SeenOnRecord[] => {
      const state = outcome.checks.map((id) => states.get(id)).find((one) => one?.state === 'proved');
      if (state?.by === undefined || state.by.day < from) return [];
      const { value } = state.by;
      // A value in words may say less than the check does: “there but thin”.
      if (value !== undefined && saidBy(`${test.id} ${value}`, { causes: [], tests: [test], together: [] }).length > 0)
        return [];
      return [{ test, outcome, day: state.by.day, job: state.by.job, words: state.check.text, side: 'left' }];
    }),
  );
}
