// What the front page of a workshop says of one machine: plain data, small beside its book, fit to be handed between threads and kept in a file.
import type { Book, DueLine } from '../book/book.ts';
import { besideOthers, type OneOfThem } from '../book/beside-others.ts';
import { outlookOf } from '../book/costs/outlook.ts';
import { needsOf, type Needs } from '../book/shopping/trips.ts';
import type { Day } from '../quantity/day.ts';
import type { Money } from '../quantity/money.ts';
import type { Machine, StockLine } from '../records/model.ts';
import type { Block } from '../sheet/sheet.ts';
import { instruments } from '../views/instruments.ts';
import { neverRecorded } from '../views/service-due.ts';
import { recordsUpTo } from '../views/wording/records-up-to.ts';
import { contextOf } from './context.ts';

/** A title of ours is said in the page’s dialect, an owner’s as it is. */
interface Titled {
  readonly title: string;
  readonly ours: boolean;
}
export interface HeldLine extends Titled {
  readonly id: string;
  readonly open: number;
}
export interface PressingLine extends Titled {
  readonly action: string;
  readonly state: DueLine['state'];
  readonly why: string;
  readonly dueDay?: Day;
}

export interface FrontLines extends OneOfThem {
  readonly spelling: Machine['spelling'];
  readonly recordsDate: Day;
  /** As it is printed; empty while nothing has been done. */
  readonly recordsUpTo: string;
  readonly recordsVersion: string;
  /** In the order of the hold points. */
  readonly held: readonly HeldLine[];
  readonly off: number;
  readonly queries: number;
  /** Whether any service is scheduled: without one nothing is known to be due, and nothing not to be. */
  readonly scheduled: boolean;
  /** All that is due or overdue, what was never recorded too. */
  readonly due: number;
  readonly neverRecorded: number;
  /** What is due or overdue and was done before. */
  readonly pressing: readonly PressingLine[];
  readonly needs: Needs;
  /** What was paid, ordered and agreed for it, fees apart. */
  readonly paid: Money;
  /** Worth of one of another currency in its own, as its owner stated. */
  readonly rates: Machine['rates'];
  /** What lies there for every machine; a machine’s own drawer stands in its own binder. */
  readonly shelf: readonly StockLine[];
  /** The table of the measuring tools that all of them share. */
  readonly instruments: readonly Block[];
}

/** Takes the lines out of a book; `folder` is the name of the machine’s folder. */
export function frontLines(folder: string, book: Book): FrontLines {
  const due = book.due.filter(isDue);
  const unknown = new Set(neverRecorded(book.due));
  return {
    ...besideOthers(folder, book),
    spelling: book.records.machine.spelling,
    recordsDate: book.recordsDate,
    recordsUpTo: recordsUpTo(book),
    recordsVersion: book.recordsVersion,
    held: heldOf(book),
    off: book.off.open.length,
    queries: book.queries.length,
    scheduled: book.due.length > 0,
    due: due.length,
    neverRecorded: due.filter((line) => unknown.has(line)).length,
    pressing: due.filter((line) => !unknown.has(line)).map(pressingLine),
    needs: needsOf(book),
    paid: outlookOf(book).machine,
    rates: book.records.machine.rates,
    shelf: (book.records.workshop?.stock ?? []).filter(({ at }) => isShared(at.file)),
    instruments: sharedInstruments(book),
  };
}

function isDue({ state }: DueLine): boolean {
  return state === 'overdue' || state === 'due';
}
function isOurs(file: string): boolean {
  return file.startsWith('content/');
}
function isShared(file: string): boolean {
  return file.startsWith('../');
}

function heldOf({ holds }: Book): readonly HeldLine[] {
  const held = holds.filter((hold) => !hold.clear).toSorted((a, b) => a.point.order - b.point.order);
  return held.map(({ point, checks }) => ({
    id: point.id,
    title: point.title,
    ours: isOurs(point.at.file),
    open: checks.filter(({ state }) => state === 'not proved' || state === 'undone').length,
  }));
}

function pressingLine({ service, state, why, dueDay }: DueLine): PressingLine {
  const { item, action, at } = service;
  return {
    title: item,
    ours: isOurs(at.file),
    action,
    state,
    why,
    ...(dueDay === undefined ? {} : { dueDay }),
  };
}

function sharedInstruments(book: Book): readonly Block[] {
  const shared = book.records.instruments.filter(({ at }) => isShared(at.file));
  if (shared.length === 0) return [];
  return instruments.blocks(contextOf({ ...book, records: { ...book.records, instruments: shared } }));
}
