// What was off, loose, empty or open at the end of an earlier record.
import type { Job } from '../records/model.ts';
import type { Book, OffBook } from './book.ts';
import { hasHappened, inOrder } from './in-order.ts';
import { makeNamer } from './names.ts';
import { offAndOn } from './off-and-on.ts';

/** As it was when a record was closed: later records are not looked at. Linear in the records before it. */
export function offAfter(book: Book, job: Job): OffBook {
  const all = inOrder(book.records.jobs).filter(hasHappened);
  return offAndOn(all.slice(0, all.indexOf(job) + 1), makeNamer(book.records.maker)).off;
}
