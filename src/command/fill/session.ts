// One sitting of typing in: the job, its sheets, and the record as it was last seen on the disk.
import { join } from 'node:path';
import type { Binder } from '../../build.ts';
import { readDay } from '../../build.ts';
import type { Answer, Change } from '../../entry/answer.ts';
import type { Blank } from '../../entry/blank.ts';
import { blanksOfAll } from '../../entry/blanks-of.ts';
import { withGiven } from '../../entry/given-in-record.ts';
import { machineSheetsFor, sheetsOfJob } from '../../entry/sheets-of-job.ts';
import { writeAnswers } from '../../entry/write-answers.ts';
import type { Problem } from '../../problem/problem.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { readMachine, type ReadMachine } from '../read-machine.ts';
import { writeWhole, type WritingDisk } from '../write-whole.ts';

type Book = Binder['book'];
type Job = Book['records']['jobs'][number];

export interface Session {
  readonly machine: string;
  readonly today: string;
  readonly hand: string | undefined;
  book: Book;
  job: Job;
  sheets: readonly Sheet[];
  /** The record as it stands on the disk, as far as this program knows. */
  text: string;
}

/** `aside`: the record cannot take answers any more; they must be kept elsewhere. */
export type Kept =
  | {
      readonly kind: 'kept';
      readonly changes: readonly Change[];
      readonly problems: readonly Problem[];
      readonly metAnother: boolean;
    }
  | { readonly kind: 'aside'; readonly why: string };

/** A session for an open job; undefined where the job has no sheets. */
export function sessionFor(
  read: ReadMachine,
  job: string,
  given: Pick<Session, 'machine' | 'today' | 'hand'>,
  more: readonly string[] = [],
): Session | undefined {
  const { binder } = read;
  const found = binder?.book.jobs.get(job);
  const text = found === undefined ? undefined : read.textOf(found.file);
  if (binder === undefined || found === undefined || text === undefined) return undefined;
  const sheets = sheetsFor(binder, found, more);
  return sheets.length === 0 ? undefined : { ...given, book: binder.book, job: found, sheets, text };
}

/** Sheets of the job, or those of the machine that are named: what is written on them goes into the job’s record. */
function sheetsFor(binder: Binder, { id: job, kind }: Job, more: readonly string[]): readonly Sheet[] {
  if (more.length === 0) return [...machineSheetsFor(binder.sheets, kind), ...sheetsOfJob(binder.sheets, job)];
  return more.flatMap((name) => binder.sheets.filter((sheet) => sheet.id === name || sheet.id === `${name}-${job}`));
}

/** All blanks of the session, in printed order. */
export function blanksIn(session: Session): readonly Blank[] {
  return blanksOfAll(session.sheets).map((blank) => withGiven(session.job, blank));
}

/**
 * Writes answers into the record. Where somebody else wrote to it meanwhile, it is read again and the answers go beside what stands
 * there now; nothing of theirs is overwritten.
 */
export function keep(
  session: Session,
  answers: readonly Answer[],
  options: { readonly instead?: boolean; readonly disk?: WritingDisk } = {},
): Kept {
  const day = readDay(session.today);
  if (!day.ok) throw new Error('a session without a day');
  let metAnother = false;
  for (let turn = 0; turn < 5; turn += 1) {
    const { book, job, sheets, text, hand } = session;
    const out = writeAnswers({
      record: { file: job.file, text },
      book,
      job,
      sheet: sheets,
      answers,
      today: day.value,
      // What another hand wrote meanwhile is never replaced.
      instead: options.instead === true && !metAnother,
      ...(hand === undefined ? {} : { hand }),
    });
    const path = join(session.machine, job.file);
    const wrote = out.value.text === text ? 'written' : writeWhole(path, out.value.text, text, options.disk);
    if (wrote === 'written') {
      session.text = out.value.text;
      return { kind: 'kept', changes: out.value.changes, problems: out.problems, metAnother };
    }
    metAnother = true;
    const why = readAgain(session);
    if (why !== undefined) return { kind: 'aside', why };
  }
  return { kind: 'aside', why: `${session.job.file} is being written to again and again by another program.` };
}

/** The record as it stands now; a sentence where it cannot take answers any more. */
function readAgain(session: Session): string | undefined {
  const read = readMachine(session.machine, session.today, {});
  const fresh = sessionFor(
    read,
    session.job.id,
    session,
    session.sheets.map((sheet) => sheet.id),
  );
  if (fresh === undefined)
    return `${session.job.file} was changed meanwhile, and cannot be read, or has no blanks any more.`;
  Object.assign(session, { book: fresh.book, job: fresh.job, sheets: fresh.sheets, text: fresh.text });
  return undefined;
}
