// The day up to which the records go, for heads and feet; nothing where nothing has been done yet.
import type { Book } from '../../book/book.ts';
import { hasHappened } from '../../book/in-order.ts';
import { dayText } from './day.ts';

/** `17 October 2026`; empty while no record says that anything was done. */
export function recordsUpTo(book: Book): string {
  return book.records.jobs.some(hasHappened) ? dayText(book.recordsDate) : '';
}

/** The foot of a card: whose it is, and of which day. */
export function cardFoot(book: Book): string {
  return [book.records.machine.name, recordsUpTo(book)].filter((part) => part !== '').join(', ');
}
