// A test that takes something off, on a machine where that is off already: only the look at it is left, and costs some minutes.
import type { FaultTables, FaultTest } from '../../records/fault-model.ts';
import type { Book } from '../book.ts';
import { firstNotOn } from '../not-on-it.ts';

/** Minutes of a look at what lies open; judgement. */
const lookMinutes = 10;

/** The tables as the machine stands: what is off need not be taken off for a test. */
export function asItStands(book: Book, faults: FaultTables): FaultTables {
  return { ...faults, tests: faults.tests.map((test) => onceOff(book, test)) };
}

/** Nothing is loosened or bought for it, and its order among the dearer tests is gone. */
function onceOff(book: Book, test: FaultTest): FaultTest {
  if (test.onceOff === undefined || firstNotOn(book, test.takesOff) === undefined) return test;
  const { caution: _atTheNuts, how: _howOff, short: _shortOff, ...left } = test;
  return { ...left, test: test.onceOff, minutes: Math.min(test.minutes, lookMinutes), money: 0, after: [] };
}
