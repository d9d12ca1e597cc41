// The lines of the no-start card: each sign that stands on it alone, with the causes that lead after it and the tests that tell most.
import { causeOdds } from '../../calc/faults/cause-odds.ts';
import { weigh } from '../../calc/faults/evidence.ts';
import { nextTests } from '../../calc/faults/next-tests.ts';
import type { OddsTable } from '../../calc/faults/odds-table.ts';
import type { CardPart, FaultTables } from '../../records/fault-model.ts';
import type { Book } from '../book.ts';
import { keptOfBook } from '../kept-of-book.ts';
import { machineFaults } from './machine-faults.ts';
import { lowerFirst } from './next-words.ts';
import { oddsOfMachine } from './odds-of-machine.ts';

export interface CardLine {
  readonly part: CardPart;
  readonly saw: string;
  readonly means: string;
  readonly next: string;
  readonly caution?: string;
}

const mostCauses = 3;
const mostTests = 2;
/** A free look is named before a test when it is worth so many times as much. */
const farMore = 3;
/** Characters of a line of the card: it must be whole on one side. */
const lineLength = 46;

/** For a machine that has stood, as the card is for a first start; held tests are on it too, since its reader is at the hold point. */
export const cardLines = keptOfBook(linesOf);

function linesOf(book: Book): readonly CardLine[] {
  const faults = machineFaults(book.content, book.records.machine.features);
  const nothing = { cured: new Map<string, string>(), moved: new Map<string, string>(), since: () => false };
  // Its reader stands at the hold point, with the machine together.
  const together = { ...faults, tests: faults.tests.map((test) => ({ ...test, fitted: [] })) };
  const made = oddsOfMachine(together, book, 'long stored', nothing);
  const table = { ...made, tests: made.tests.map((test) => ({ ...test, held: [] })) };
  const outcomes = faults.tests.flatMap((test) =>
    test.outcomes.map((one) => ({
      ...one,
      refs: [`${test.id}=${one.saw}`],
      before: test.when.slice(0, 1),
    })),
  );
  const rows = faults.together.map((row) => ({
    ...row,
    refs: row.saw,
    before: [],
    words: row.words ?? '',
    means: undefined,
  }));
  return [...outcomes, ...rows].flatMap(({ card, words, refs, before, means, caution }): readonly CardLine[] => {
    if (card === undefined || words === '') return [];
    const line = {
      part: card,
      saw: words,
      means: means ?? meansOf(table, faults, refs),
      next: nextOf(table, faults, [...before, ...refs]),
    };
    return [caution === undefined ? line : { ...line, caution }];
  });
}

/** The causes that it speaks for, the likeliest first. */
function meansOf(table: OddsTable, faults: FaultTables, refs: readonly string[]): string {
  const names = new Map(faults.causes.map((cause) => [cause.id, cause.short ?? cause.cause]));
  const raised = causeOdds(weigh(table, refs)).filter((one) => one.parts.some(({ times }) => times > 1));
  return onOneLine(
    raised.slice(0, mostCauses).map(({ id }) => names.get(id) ?? id),
    '; ',
  );
}

/** The tests that tell most; a free look that tells far more than any test goes first. */
function nextOf(table: OddsTable, faults: FaultTables, refs: readonly string[]): string {
  const names = new Map(faults.tests.map((test) => [test.id, test.short ?? test.test]));
  const { looks, next } = nextTests(weigh(table, refs));
  const [leader] = next;
  const telling = looks.filter(({ worth }) => worth > farMore * (leader?.worth ?? 0));
  const best = [...telling, ...next].slice(0, mostTests);
  const [first = '', ...more] = best.map(({ id }) => names.get(id) ?? id);
  return onOneLine([first, ...more.map(lowerFirst)], '; then ');
}

/** As many as stay on one line of the card; the first always. */
function onOneLine(texts: readonly string[], between: string): string {
  let line = '';
  for (const text of texts) {
    const longer = line === '' ? text : line + between + text;
    if (line !== '' && longer.length > lineLength) return line;
    line = longer;
  }
  return line;
}
