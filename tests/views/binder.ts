// A machine folder of the project as a book with its sheets and pages, for tests of views and goldens.
import { join } from 'node:path';
import { makeBook } from '../../src/book/make.ts';
import type { Book } from '../../src/book/book.ts';
import { composePages } from '../../src/compose/pages.ts';
import type { PageSpec } from '../../src/compose/pages.ts';
import { composeSheets } from '../../src/compose/sheets.ts';
import { packageFolder, readContentFolder, readMachineFolder } from '../../src/disk.ts';
import type { Problem } from '../../src/problem/problem.ts';
import type { Day } from '../../src/quantity/day.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { readContent } from '../../src/records/read-content.ts';
import { withOwnContent } from '../../src/records/own/own-content.ts';
import { readRecords } from '../../src/records/read.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import type { SourceFile } from '../../src/source/files.ts';
import { keeper } from '../set-up/kept.ts';

export interface TestBinder {
  readonly book: Book;
  readonly sheets: readonly Sheet[];
  readonly pages: readonly PageSpec[];
  readonly problems: readonly Problem[];
}

/** A day in a test; throws when it is none. */
export function day(text: string): Day {
  const read = readDay(text);
  if (!read.ok) throw new Error(`not a day: ${text}`);
  return read.value;
}

/** Content as it is in the project, with files put in the place of others of the same name. */
export function contentWith(instead: readonly SourceFile[] = []): readonly SourceFile[] {
  const names = new Set(instead.map((file) => file.file));
  return [...readContentFolder().filter((file) => !names.has(file.file)), ...instead];
}

/** The binder of a folder below the project, its files changed as a test wants them. */
export function binderOf(
  folder: string,
  today: string,
  change?: (files: readonly SourceFile[]) => readonly SourceFile[],
  content?: readonly SourceFile[],
): TestBinder {
  if (change === undefined && content === undefined) return asItIs(folder, today);
  return makeBinder(folder, today, change, content);
}

const asItIs = keeper((folder, today) => makeBinder(folder, today));

function makeBinder(
  folder: string,
  today: string,
  change: (files: readonly SourceFile[]) => readonly SourceFile[] = (files) => files,
  content: readonly SourceFile[] = contentWith(),
): TestBinder {
  const machine = readMachineFolder(join(packageFolder(), folder)).value;
  if (machine === undefined) throw new Error(`not a machine folder: ${folder}`);
  const read = readContent(content);
  const records = readRecords(change(machine.files), machine.assets, []);
  if (records.value === undefined) throw new Error(`no machine could be read in ${folder}`);
  const own = withOwnContent(read.value, machine.files);
  const book = makeBook(records.value, own.value, day(today));
  const sheets = composeSheets(book, {});
  const pages = composePages(book, sheets.value);
  return {
    book,
    sheets: sheets.value,
    pages,
    problems: [...read.problems, ...own.problems, ...records.problems, ...sheets.problems],
  };
}
