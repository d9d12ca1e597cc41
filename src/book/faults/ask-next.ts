// What the command asks: typed observations understood or refused with the nearest names, then the answer as lines or data.
import type { Book } from '../book.ts';
import { diagnose, type Asked } from './diagnosis.ts';
import { faultListData, faultListLines } from './fault-list.ts';
import { nameOutcome, type NamedOutcome } from './fault-names.ts';
import { machineFaults } from './machine-faults.ts';
import { nextData } from './next-data.ts';
import { nextLines } from './next-lines.ts';

export interface NextAsked {
  /** As typed: `spark=none`. */
  readonly saw: readonly string[];
  readonly looked: boolean;
  readonly working: boolean;
  readonly standing?: 'long stored' | 'lately running';
}

export interface NextAnswer {
  readonly lines: readonly string[];
  readonly data: Readonly<Record<string, unknown>>;
  /** What was not understood, each with the nearest names; then nothing was ranked. */
  readonly refused: readonly { readonly message: string; readonly near: readonly string[] }[];
  readonly impossible: boolean;
}

/** Reads what was typed and looks for the next test. */
export function askNext(book: Book, { saw, looked, working, standing }: NextAsked): NextAnswer {
  const { tests } = machineFaults(book.content, book.records.machine.features);
  const named: NamedOutcome[] = [];
  const refused: { message: string; near: readonly string[] }[] = [];
  for (const word of saw) {
    const [test = '', outcome = ''] = word.split('=');
    const naming = nameOutcome(tests, test.trim(), outcome.trim().toLowerCase());
    if (naming.ok) named.push(naming.value);
    else refused.push(naming);
  }
  if (refused.length > 0) return { lines: [], data: {}, refused, impossible: false };
  const asked: Asked = { saw: named, looked, ...(standing === undefined ? {} : { standing }) };
  const found = diagnose(book, asked);
  return {
    lines: nextLines(book, found, working),
    data: nextData(book, found),
    refused,
    impossible: found.impossible.length > 0,
  };
}

/** Every name that can be typed, for this machine. */
export function listNext(book: Book): {
  readonly lines: readonly string[];
  readonly data: Readonly<Record<string, unknown>>;
} {
  const faults = machineFaults(book.content, book.records.machine.features);
  return { lines: faultListLines(faults), data: faultListData(faults) };
}
