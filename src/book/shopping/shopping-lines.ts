// The shopping list as lines for the command line, and as plain data for another program; over one machine or several.
import type { Day } from '../../quantity/day.ts';
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { Supplier } from '../../records/model.ts';
import type { Book } from '../book.ts';
import { plainName } from '../names.ts';
import { impliedText } from '../plan/way-back-text.ts';
import { numbersText, superseded } from './numbers.ts';
import type { PartLine } from './part-lines.ts';
import type { Of, ShoppingList } from './shopping-list.ts';
import type { ToGet, Trip } from './trips.ts';
import { shoppingList } from './shopping-list.ts';
import { usedTogether } from './used-together.ts';
import {
  askedText,
  awayText,
  buyingText,
  comingText,
  coreText,
  countedName,
  holdingText,
  shopText,
} from './shopping-text.ts';

/** The supplier of a part, by the name under `from`. */
export function supplierOf(books: readonly Book[], from: string | undefined): Supplier | undefined {
  const suppliers = books.flatMap(({ records }) => records.workshop?.suppliers ?? []);
  return from === undefined ? undefined : suppliers.find(({ name }) => plainName(name) === plainName(from));
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', title, ...lines.map((line) => `  ${line}`)];
}

interface Counter {
  readonly books: readonly Book[];
  readonly today: Day;
  readonly numbers: (one: ToGet['part']) => string;
}

function pieces(one: ToGet, { books, numbers }: Counter): readonly string[] {
  return [
    ...[holdingText(one)].filter((text) => text !== undefined),
    ...(one.fastener?.thread === undefined ? [] : [one.fastener.thread]),
    ...[numbers(one.part)].filter((text) => text !== ''),
    ...buyingText(one),
    ...(one.part.price === undefined ? [] : [formatMoney(one.part.price)]),
    `for ${one.askedBy.map((who) => askedText(who, one.askedBy, books.length)).join(' and ')}`,
  ];
}

function tripLines(trip: Trip, counter: Counter): readonly string[] {
  const head = [trip.name === '' ? 'supplier not named' : trip.name, ...shopText(trip)].join('; ');
  const lines = trip.toGet.map((one) => `${countedName(one.part.part, one.count)}: ${pieces(one, counter).join('; ')}`);
  return section(head, lines);
}

function counterFor(books: readonly Book[], today: Day): Counter {
  const of = superseded(books.flatMap(({ parts }) => parts.map(({ part }) => part)));
  return { books, today, numbers: (part) => numbersText(part, of) };
}

function ofMachine({ books }: Counter, machine: string): string {
  return books.length > 1 ? `${machine}: ` : '';
}

function partLinesOf(
  lines: readonly Of<PartLine>[],
  counter: Counter,
  say: (line: Of<PartLine>) => string,
): readonly string[] {
  return lines.map(
    (line) => `${ofMachine(counter, line.machine)}${countedName(line.part.part, line.count)}: ${say(line)}`,
  );
}

function otherLines(list: ShoppingList, counter: Counter): readonly string[] {
  const { books, today } = counter;
  return [
    ...section(
      'On its way',
      partLinesOf(list.coming, counter, (one) => comingText(one, today, supplierOf(books, one.part.from))),
    ),
    ...section(
      'Away at work',
      list.away.map(
        (one) => `${ofMachine(counter, one.machine)}${one.entry.thing}: ${awayText(one, today).join('; ')}`,
      ),
    ),
    ...section(
      'Old parts to send back',
      partLinesOf(list.cores, counter, (one) => coreText(one, today)),
    ),
    ...section(
      'Used up by the work, and on no list: look in the drawer',
      usedTogether(list.implied).map(({ machines, text }) => `${ofMachine(counter, machines.join(', '))}${text}`),
    ),
    ...section(
      'Here and not fitted: hold it against the old one first',
      partLinesOf(list.here, counter, ({ job }) => job.title),
    ),
  ];
}

/** What to buy, fetch and send back, in lines. */
export function shoppingLines(books: readonly Book[]): readonly string[] {
  const today = books[0]?.today;
  if (today === undefined) return [];
  const list = shoppingList(books);
  const counter = counterFor(books, today);
  const held = list.spendingHeld.map(
    ({ machine, point }) => `${ofMachine(counter, machine)}“${point.title}” is held: look at the papers first`,
  );
  const all = [...list.trips.flatMap((trip) => tripLines(trip, counter)), ...otherLines(list, counter)];
  return all.length === 0
    ? [...held, 'Nothing is to get.']
    : [...held, ...(all[0] === '' && held.length === 0 ? all.slice(1) : all)];
}

/** The same as plain data. */
export function shoppingData(books: readonly Book[]): object {
  const list = shoppingList(books);
  const today = books[0]?.today;
  if (today === undefined) return {};
  const { numbers } = counterFor(books, today);
  return {
    today,
    suppliers: list.trips.map((trip) => ({
      supplier: trip.name,
      open: trip.next === undefined ? null : { day: trip.next.day, hours: trip.next.hours },
      toGet: trip.toGet.map((one) => ({
        part: one.part.part,
        count: one.count,
        numbers: numbers(one.part),
        holds: one.holds?.id ?? null,
        says: buyingText(one),
        askedBy: one.askedBy.map(({ machine, job, count }) => ({ machine, job: job.id, count })),
      })),
    })),
    coming: list.coming.map((one) => ({
      machine: one.machine,
      part: one.part.part,
      count: one.count,
      says: comingText(one, today, supplierOf(books, one.part.from)),
    })),
    away: list.away.map((one) => ({ machine: one.machine, thing: one.entry.thing, says: awayText(one, today) })),
    sendBack: list.cores.map((one) => ({ machine: one.machine, part: one.part.part, says: coreText(one, today) })),
    usedUp: list.implied.map((one) => ({ machine: one.machine, what: impliedText(one), job: one.job?.id ?? null })),
    here: list.here.map((one) => ({ machine: one.machine, part: one.part.part, count: one.count, job: one.job.id })),
  };
}
