// A calculation asked for in words, with or without a machine, as lines for the command line.
import type { Doubt } from '../calc/calculation.ts';
import { doubtOf } from '../calc/calculation.ts';
import { calculationById } from '../calc/list.ts';
import { readValues } from '../calc/work.ts';
import { inputLines, readGiven, resultLines, workingLines } from '../calc/work-text.ts';
import { printFigure } from '../figure/print.ts';
import type { Value } from '../calc/calculation.ts';
import type { Book } from './book.ts';
import { calculationOn } from './taken/on-machine.ts';
import type { TakenInput } from './taken/on-machine.ts';
import { apart, wrongChoices } from './taken/which.ts';

export interface WorkLines {
  readonly lines: readonly string[];
  readonly doubts: readonly Doubt[];
  /** False when what was asked for was not understood at all. */
  readonly understood: boolean;
}

export type Nearest = (typed: string, names: readonly string[]) => readonly string[];

function valueText(value: Value): string {
  if (typeof value === 'string') return value;
  return 'unit' in value ? printFigure(value) : value.map((one) => printFigure(one)).join('; ');
}

function takenLines(taken: readonly TakenInput[]): readonly string[] {
  if (taken.length === 0) return [];
  return [
    '',
    'taken from the machine',
    ...taken.map(({ input, value, from }) => '  ' + input + ' = ' + valueText(value) + ' · ' + from),
  ];
}

/** What to write instead, for a doubt about an input. */
function withHint(doubt: Doubt, id: string, inMachine: boolean): Doubt {
  if (doubt.input === undefined) return doubt;
  const example = calculationById(id)?.example.given[doubt.input];
  if (example === undefined) return doubt;
  const told = "write '" + doubt.input + '=' + example + "'";
  const missing = doubt.code === 'calculation-value-missing';
  const hint = missing && inMachine ? 'the machine does not say it: ' + told : told;
  return { ...doubt, hint: doubt.hint === undefined ? hint : doubt.hint + '; ' + hint };
}

/** Works out calculation `id` from words like `bore=50 mm`; with a book, what is not given is taken from its machine. */
export function workLines(id: string, words: readonly string[], book: Book | undefined, nearest: Nearest): WorkLines {
  const calculation = calculationById(id);
  const { given: written, strange } = readGiven(words);
  if (calculation === undefined)
    return {
      lines: [],
      doubts: [doubtOf('calculation-unknown', '“' + id + '” is not a calculation')],
      understood: false,
    };
  const { given, which } = apart(calculation, written);
  const unasked = Object.keys(given).filter((name) => calculation.inputs[name] === undefined);
  const odd = strange.map((word) => doubtOf('calculation-value-wrong', '“' + word + '” is not name=value'));
  const chosen =
    book === undefined
      ? Object.keys(which).map((name) => ({
          ...doubtOf(
            'calculation-value-wrong',
            '“' + name + '” chooses something of a machine, and none is given',
            name,
          ),
          hint: 'add --in and its folder',
        }))
      : wrongChoices(book, which, nearest);
  const read = readValues(calculation, given);
  const wrong = [...odd, ...chosen, ...read.doubts];
  const understood = odd.length === 0 && unasked.length === 0 && chosen.length === 0;
  if (wrong.length > 0)
    return {
      lines: ['values of ' + id, ...inputLines(calculation)],
      doubts: wrong.map((one) => withHint(one, id, false)),
      understood,
    };
  const onMachine = book === undefined ? undefined : calculationOn(book, id, read.values, which);
  const worked = onMachine?.worked ?? calculation.run(read.values);
  const doubts = worked.doubts.map((one) => withHint(one, id, book !== undefined));
  const results = resultLines(calculation, worked).map((line) => '  ' + line);
  const taken = takenLines(onMachine?.taken ?? []);
  const working = ['', 'working', ...workingLines(calculation, worked).map((line) => '  ' + line)];
  if (results.length === 0 && doubts.some((doubt) => doubt.severity === 'problem'))
    return { lines: ['values of ' + id, ...inputLines(calculation), ...taken], doubts, understood: true };
  const none = results.length === 0 ? ['  nothing to say with these values'] : [];
  return { lines: [calculation.name, ...results, ...none, ...taken, ...working], doubts, understood: true };
}
