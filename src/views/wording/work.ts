// One line of off and on in words: what was done to what, and everything that will be asked about it later.
import type { Book } from '../../book/book.ts';
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { WorkEntry } from '../../records/model.ts';
import { times } from './count.ts';
import { dayText } from './day.ts';
import { fastenerNamed } from './fastener.ts';
import { itemName, plain } from './named.ts';
import { writtenText } from './value.ts';

export type Say = (words: string) => string;

/** The particulars of an entry: bag, fasteners, torque, quantity, firm; each in a few words. */
export function workParticulars(book: Book, say: Say, entry: WorkEntry): string {
  return [...whereItWent(say, entry), ...howTight(book, say, entry), ...howMuch(entry), ...whoHasIt(say, entry)]
    .concat(entry.note ?? [])
    .join('; ');
}

/** The thing with its number, as `2 × carburettor`, or under its own name where the maker's data knows it. */
export function workThing(book: Book, entry: WorkEntry): string {
  const name = itemName(book, entry.thing);
  return entry.count === undefined ? name : `${times(entry.count)}\u00a0${name}`;
}

function whereItWent(say: Say, entry: WorkEntry): readonly string[] {
  return [
    ...(entry.bag === undefined ? [] : [`${say('bag')} ${entry.bag}`]),
    ...(entry.fromBag === undefined ? [] : [`${say('from bag')} ${entry.fromBag}`]),
    ...(entry.where === undefined ? [] : [entry.where]),
    ...(entry.wayRound === undefined ? [] : [`${say('way round')}: ${entry.wayRound}`]),
  ];
}

function howTight(book: Book, say: Say, entry: WorkEntry): readonly string[] {
  return [
    ...entry.fasteners.map((one) => `${times(one.count)}\u00a0${fastenerNamed(book, one.id).name}`),
    ...(entry.torque === undefined ? [] : [`${say('to')} ${writtenText(entry.torque)}`]),
    ...(entry.threads === undefined ? [] : [`${say('threads')} ${say(entry.threads)}`]),
    ...(entry.wrench === undefined ? [] : [plain(entry.wrench)]),
    ...(entry.result === undefined ? [] : [say(entry.result)]),
  ];
}

function howMuch(entry: WorkEntry): readonly string[] {
  return [
    ...(entry.quantity === undefined ? [] : [writtenText(entry.quantity)]),
    ...(entry.grade === undefined ? [] : [entry.grade]),
    ...(entry.ratio === undefined ? [] : [writtenText(entry.ratio)]),
  ];
}

function whoHasIt(say: Say, entry: WorkEntry): readonly string[] {
  return [
    ...(entry.to === undefined ? [] : [`${say('to')} ${entry.to}`]),
    ...(entry.promised === undefined ? [] : [`${say('promised for')} ${dayText(entry.promised)}`]),
    ...(entry.price === undefined ? [] : [formatMoney(entry.price)]),
  ];
}
