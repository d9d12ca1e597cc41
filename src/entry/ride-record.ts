// A line of the ride log as a record of its own: date; out; in; fuel; oil; weather; what happened, in the order in which it is printed.
import type { Book } from '../book/book.ts';
import type { Day } from '../quantity/day.ts';
import { readDaySpan } from '../quantity/day-arithmetic.ts';
import { cleanAnswer } from './clean-answer.ts';
import { flowText } from './flow-text.ts';
import { judgeClock } from './judge-clock.ts';
import { readBoxValue } from './read-value.ts';

export interface Ride {
  readonly day: Day;
  /** File of the record below the machine folder, one that is free. */
  readonly file: string;
  readonly text: string;
  /** What there is to say of it at once; it may stand all the same. */
  readonly doubts: readonly string[];
}
export type RideRead = { readonly ok: true; readonly value: Ride } | { readonly ok: false; readonly why: string };

const columns = ['out', 'in', 'fuel', 'oil', 'weather', 'what happened'] as const;

/** Reads a line. `taken` are files that exist; a bare number is in the unit of the clock, fuel in litres, oil in millilitres. */
export function readRide(book: Book, line: string, today: Day, taken: ReadonlySet<string>): RideRead {
  const [date = '', ...rest] = line.split(/[;|\t]/u).map(cleanAnswer);
  if (rest.length > columns.length)
    return {
      ok: false,
      why: `There are more than ${String(columns.length + 1)} parts in it; words may hold no semicolon.`,
    };
  const span = readDaySpan(/^t(?:oday)?$/iu.test(date) ? today : date);
  if (!span.ok) return { ok: false, why: `${span.why.message}: begin with the date, as ${today}.` };
  const { from: day, to, whole } = span.value;
  if (whole !== undefined || to !== day) return { ok: false, why: `A ride has one day, as ${today}.` };
  if (day > today) return { ok: false, why: `${day} is still to come.` };
  const clock = book.records.machine.clock.at(-1)?.unit.symbol ?? '';
  const units: Readonly<Record<string, string>> = { out: clock, in: clock, fuel: 'l', oil: 'ml' };
  const said: Record<string, string> = {};
  for (const [index, column] of columns.entries()) {
    const value = rest[index] ?? '';
    if (value === '' || value === '-' || value === '?') continue;
    const unit = units[column];
    const dimension = column === 'out' || column === 'in' ? 'distance ridden' : 'volume';
    const read = unit === undefined ? undefined : readBoxValue(value, unit, dimension);
    if (read !== undefined && read.kind !== 'read')
      return { ok: false, why: `${column}: ${read.kind === 'refused' ? read.message : `“${value}” is no value`}.` };
    said[column] = read?.text ?? value;
  }
  if (Object.keys(said).length === 0) return { ok: false, why: 'Nothing is said of it but the day.' };
  const text = [
    '---',
    'title: Ride',
    `date: ${day}`,
    'kind: ride',
    'state: done',
    `ride: ${flowText(said)}`,
    '---',
    '',
  ];
  const doubts = ['out', 'in'].flatMap((end) => clockDoubts(book, day, said[end]));
  return { ok: true, value: { day, file: freeFile(day, taken), text: text.join('\n'), doubts } };
}

function clockDoubts(book: Book, day: Day, reads: string | undefined): readonly string[] {
  if (reads === undefined) return [];
  return judgeClock(book, { id: '', date: { from: day, to: day } }, reads).map(({ text }) => `${reads}: ${text}`);
}

function freeFile(day: Day, taken: ReadonlySet<string>): string {
  for (let number = 1; ; number += 1) {
    const file = `jobs/${day}-ride${number === 1 ? '' : `-${String(number)}`}.md`;
    if (!taken.has(file.toLowerCase())) return file;
  }
}
