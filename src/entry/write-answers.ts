// Answers into a job record: the text with the values put in, every other byte as it was, and what that changes, in words.
import type { Book } from '../book/book.ts';
import type { Outcome, Problem } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import { dimensionsOf } from '../records/dimensions-of.ts';
import type { Job } from '../records/model.ts';
import { readJob } from '../records/read-job.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { readDocument } from '../source/document.ts';
import type { SourceFile } from '../source/files.ts';
import type { Answer, Change } from './answer.ts';
import { begin } from './begun.ts';
import { blanksOfAll } from './blanks-of.ts';
import { cleanAnswer } from './clean-answer.ts';
import { draftOf } from './draft.ts';
import { editRecord } from './edit-record.ts';
import { takeAll } from './take-all.ts';

export interface AnswersIn {
  readonly record: SourceFile;
  readonly book: Book;
  readonly job: Job;
  /** The sheet that was filled, or several sheets of the job. */
  readonly sheet: Sheet | readonly Sheet[];
  readonly answers: readonly Answer[];
  readonly today: Day;
  /** Whose hand filled it. */
  readonly hand?: string;
  /** A value that stands there gives way to the answer; without it both are kept. */
  readonly instead?: boolean;
}
export interface AnswersOut {
  readonly text: string;
  readonly changes: readonly Change[];
}

/**
 * Writes the answers that can be taken; each that cannot is a problem that names its blank. A record that could be read before can be
 * read after, or nothing is written.
 */
export function writeAnswers(given: AnswersIn): Outcome<AnswersOut> {
  const { record, book, job, sheet, today } = given;
  const document = readDocument(record);
  const unchanged = { text: record.text, changes: [] };
  if (document.value === undefined) return { value: unchanged, problems: document.problems };
  const draft = draftOf({ book, job, today, hand: given.hand, instead: given.instead === true }, document.value.data);
  const blanks = blanksOfAll('blocks' in sheet ? [sheet] : sheet);
  takeAll(draft, blanks, answersByBlank(given.answers));
  begin(draft);
  const written = editRecord(record, draft.edits);
  const broken = newProblems(record, written.value, book);
  if (broken.length > 0) return { value: unchanged, problems: [...draft.problems, ...broken] };
  const changes = draft.changes
    .filter(({ by }) => by === undefined || !written.failed.has(by))
    .map(({ change }) => change);
  return { value: { text: written.value, changes }, problems: [...draft.problems, ...written.problems] };
}

/** Answers as one clean line each; empty ones are none. The same blank may be answered more than once. */
function answersByBlank(answers: readonly Answer[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { blank, value } of answers) {
    const clean = cleanAnswer(value);
    if (clean === '') continue;
    const list = found.get(blank);
    if (list === undefined) found.set(blank, [clean]);
    else list.push(clean);
  }
  return found;
}

/** What cannot be read of the record now and could be read before. */
function newProblems(record: SourceFile, text: string, book: Book): readonly Problem[] {
  if (text === record.text) return [];
  const dimensionOf = dimensionsOf(book.records.maker);
  const said = (of: string): readonly Problem[] => readJob({ file: record.file, text: of }, dimensionOf).problems;
  const before = new Set(said(record.text).map(({ code, message }) => code + message));
  return said(text).filter(({ code, message }) => !before.has(code + message));
}
