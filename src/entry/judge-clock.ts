// What is said at once of a reading of the clock: it cannot be read, or it lies on the wrong side of another day's.
import type { Book } from '../book/book.ts';
import { printFigure } from '../figure/print.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import type { Job } from '../records/model.ts';
import type { Judged } from './judge-answer.ts';

/** A clock counts one way; only readings of the clock that is fitted are compared, and none of the job itself. */
export function judgeClock(book: Book, job: Pick<Job, 'id' | 'date'>, said: string): readonly Judged[] {
  const period = book.records.machine.clock.at(-1);
  if (said.toLowerCase() === 'none' || period === undefined) return [];
  const read = readQuantity(/^[\d\s.,]+$/u.test(said) ? `${said} ${period.unit.symbol}` : said, 'distance ridden');
  if (!read.ok) return [{ code: 'unreadable', text: `${read.why.message}.` }];
  const others = book.odometer.readings.filter((one) => one.job !== job.id && one.day >= period.from.day);
  const day = job.date.to;
  const before = others.findLast((one) => one.day <= day)?.clock;
  if (before !== undefined && read.value.quantity < before.quantity)
    return [
      { code: 'went-back', text: `Less than ${printFigure(before)}, which it read before. A clock counts one way.` },
    ];
  const after = others.find((one) => one.day > day)?.clock;
  if (after === undefined || read.value.quantity <= after.quantity) return [];
  return [{ code: 'went-back', text: `More than ${printFigure(after)}, which it read later. A clock counts one way.` }];
}
