// The sheets of a binder: each definition of content times the machine, or times each planned job; blocks are made when they are asked for.
import type { Book } from '../book/book.ts';
import type { Outcome } from '../problem/problem.ts';
import { sheetCode } from '../records/square-codes.ts';
import type { Block, Paper, Sheet } from '../sheet/sheet.ts';
import type { ViewContext } from '../views/view.ts';
import { recordsUpTo } from '../views/wording/records-up-to.ts';
import { sheetsOf, waits } from '../views/wording/sheet-names.ts';
import type { NamedSheet } from '../views/wording/sheet-names.ts';
import { checkSheets } from './check-sheets.ts';
import { contextOf } from './context.ts';
import { sheetBlocks } from './sheet-blocks.ts';

interface Options {
  readonly paper?: Paper;
  readonly sides?: Sheet['sides'];
  readonly workings?: boolean;
}

/**
 * Sheets that are printed, in the order of their files, and what is wrong with those files. `paper` overrides every paper;
 * `workings` adds the sheet of workings.
 */
export function composeSheets(book: Book, options: Options): Outcome<readonly Sheet[]> {
  const context = contextOf(book);
  const printed = sheetsOf(book, options.workings === true).filter((named) => named.definition.on.includes('paper'));
  return { value: printed.map((named) => sheetOf(context, named, options)), problems: checkSheets(book) };
}

function sheetOf(context: ViewContext, named: NamedSheet, options: Options): Sheet {
  const { book, say } = context;
  const { machine } = book.records;
  const { definition } = named;
  const continued = named.job?.continues;
  const before = continued === undefined ? undefined : (book.jobs.get(continued)?.title ?? continued);
  let made: readonly Block[] | undefined;
  return {
    id: named.id,
    code: definition.code,
    title: say(named.title),
    language: machine.spelling === 'us' ? 'en-US' : 'en-GB',
    machine: machine.name,
    frame: frameEnd(book),
    recordsDate: recordsUpTo(book),
    recordsDay: recordsUpTo(book) === '' ? '' : book.recordsDate,
    recordsVersion: book.recordsVersion,
    paper: options.paper ?? definition.paper ?? machine.paper,
    binding: definition.binding,
    sides: options.sides ?? machine.sides,
    foot: definition.foot,
    ...(named.job === undefined ? {} : { job: named.job.id }),
    ...(definition.keptBy === undefined ? {} : { keptBy: definition.keptBy }),
    ...(before === undefined ? {} : { continues: before }),
    leftOut: leftOut(context),
    squareCode: sheetCode(machine, { id: named.id, code: definition.code }, named.job?.id),
    ...(definition.carries === 'data' ? { carriesData: true } : {}),
    ...(waits(definition, book) ? { byName: true } : {}),
    get blocks() {
      made ??= sheetBlocks(context, named, 'paper');
      return made;
    },
  };
}

/** The last six characters of the frame number as stamped; empty when it is not known. */
export function frameEnd(book: Book): string {
  const stamped = book.records.machine.numbers.find((number) => number.name === 'frame')?.stamped ?? '';
  return stamped === '?' ? '' : stamped.slice(-6).replace(/^[^\p{L}\p{N}]+/u, '');
}

/** What every sheet says at its head when a record could not be read. */
export function leftOut({ book, say }: ViewContext): readonly string[] {
  return book.records.unread.map(
    ({ file, codes }) =>
      `${say('Left out')}: ${file} (${codes.join(', ')}). ${say('Whatever depends on it is held until it can be read.')}`,
  );
}
