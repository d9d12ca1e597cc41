// The program on one screen: files in; book, sheets, pages and problems out. No disk, no clock, no printer.
import type { Book } from './book/book.ts';
import { makeBook } from './book/make.ts';
import type { SiteList } from './compose/page-parts.ts';
import { composeSite, type PageSpec } from './compose/pages.ts';
import { searchEntries } from './compose/search-entries.ts';
import { composeSheets, frameEnd } from './compose/sheets.ts';
import type { Outcome, Problem } from './problem/problem.ts';
import type { Day } from './quantity/day.ts';
import { readDay } from './quantity/day-arithmetic.ts';
import { checkContentReferences } from './records/check-content-references.ts';
import type { Content } from './records/content-model.ts';
import { withOwnContent } from './records/own/own-content.ts';
import type { Records } from './records/model.ts';
import { readRecords } from './records/read.ts';
import type { Paper, Sheet } from './sheet/sheet.ts';
import type { Asset, SourceFile } from './source/files.ts';
import { recordsUpTo } from './views/wording/records-up-to.ts';

export { binderData } from './binder/binder-data.ts';
export { withoutPrivate } from './binder/without-private.ts';
export { dueCalendar } from './binder/due-calendar.ts';
export { askNext, listNext } from './book/faults/ask-next.ts';
export { binderSchema } from './binder/binder-schema.ts';
export { aboutLines, calculationIds, calculationsThatSay, groupedLines } from './calc/list-text.ts';
export type { Doubt } from './calc/calculation.ts';
export { eveningData, eveningLines } from './book/plan/evening-lines.ts';
export { shoppingData, shoppingLines } from './book/shopping/shopping-lines.ts';
export { searchEntries };
export { cautionsOfCalculations } from './book/cautions-of-calculations.ts';
export { workLines } from './book/work-lines.ts';
export { besideOthers, type OneOfThem } from './book/beside-others.ts';
export { lookOverWorkshop } from './book/workshop-looks.ts';
export { frontLines, type FrontLines } from './compose/front-lines.ts';
export { composeWorkshop, type StoppedMachine } from './compose/workshop-page.ts';
export type { Sheet };
export { unpackContent } from './records/packed-content.ts';
export { readContent } from './records/read-content.ts';
export { locate } from './source/locate.ts';
export { readDay };

export interface BuildInput {
  /** Records of one machine, in any order. */
  readonly files: readonly SourceFile[];
  /** Photos and papers beside them, by name only. */
  readonly assets: readonly Asset[];
  /** Files of the workshop that count for this machine. */
  readonly shared: readonly SourceFile[];
  /** What `readContent` made of the content folder. */
  readonly content: Outcome<Content>;
  /** What was wrong with files before they could be read. */
  readonly before: readonly Problem[];
  readonly today: Day;
  /** Paper of every sheet; without it, the machine's own. */
  readonly paper?: Paper;
  /** Sides of a leaf that are printed; without it, as the machine says. */
  readonly sides?: 'one' | 'both';
  /** The sheet of workings is wanted as well. */
  readonly workings?: boolean;
  /** SHA-256 over the list of the records' hashes, see records/fingerprint.ts; printed on the history. */
  readonly fingerprint?: string;
  /** The records are those of a copy for the next owner, and the binder says so. */
  readonly copy?: 'buyer';
  /** Only pages are wanted: no sheet is printed, and no page leads to one. */
  readonly siteOnly?: boolean;
}

/** Everything that the printers need. */
export interface Binder {
  readonly book: Book;
  readonly sheets: readonly Sheet[];
  readonly pages: readonly PageSpec[];
  /** The same pages by their names, each listed with the part of the site that it is of. */
  readonly site: SiteList;
  /** Last characters of the frame number; empty when it is not known. */
  readonly frame: string;
  /** Newest date in the records, ready to print. */
  readonly recordsDate: string;
}

/**
 * Makes a binder as far as one can be made; undefined only when the machine itself cannot be read. Whoever prints it decides
 * what to do about the problems: see `stops`.
 */
export function build(input: BuildInput): Outcome<Binder | undefined> {
  const records = readRecords(input.files.toSorted(byName), input.assets, input.shared);
  const content = withOwnContent(input.content.value, input.files.toSorted(byName));
  const before = [...input.before, ...input.content.problems, ...records.problems, ...content.problems];
  if (records.value === undefined) return { value: undefined, problems: before };
  before.push(...checkContentReferences(records.value, content.value));
  const { fingerprint, copy } = input;
  const book = makeBook(withoutWrong(records.value, before), content.value, input.today, {
    ...(fingerprint === undefined ? {} : { fingerprint }),
    ...(copy === undefined ? {} : { copy }),
  });
  const sheets = composeSheets(book, {
    workings: input.workings === true,
    ...(input.paper === undefined ? {} : { paper: input.paper }),
    ...(input.sides === undefined ? {} : { sides: input.sides }),
  });
  const printed = input.siteOnly === true ? [] : sheets.value;
  const site = once(() => composeSite(book, printed));
  const pages = once(() => site().all());
  return {
    value: {
      book,
      sheets: printed,
      // A check asks for none, and naming them all takes reading every published table.
      get pages() {
        return pages();
      },
      get site() {
        return site();
      },
      frame: frameEnd(book),
      recordsDate: recordsUpTo(book),
    },
    problems: [...before, ...book.queries, ...sheets.problems],
  };
}

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}

/** One order, whatever order the disk lists files in. */
function byName(a: SourceFile, b: SourceFile): number {
  return a.file < b.file ? -1 : 1;
}

/**
 * The records without those that have a problem, which are named as left out. Check and build stop at problems anyway; a sheet that
 * is printed all the same must not compute with them.
 */
function withoutWrong(records: Records, problems: readonly Problem[]): Records {
  const wrong = new Map(records.unread.map(({ file, codes }) => [file, codes]));
  for (const { at, code } of stops(problems)) wrong.set(at.file, [...new Set([...(wrong.get(at.file) ?? []), code])]);
  const unread = [...wrong].map(([file, codes]) => ({ file, codes })).toSorted((a, b) => (a.file < b.file ? -1 : 1));
  return { ...records, jobs: records.jobs.filter((job) => !wrong.has(job.file)), unread };
}

/** The problems that stop check and build; the rest are queries for a person to look at. */
export function stops(problems: readonly Problem[]): readonly Problem[] {
  return problems.filter((problem) => problem.severity === 'problem');
}
