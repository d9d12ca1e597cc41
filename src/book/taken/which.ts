// The words that choose between several things of a machine, told apart from the values of a calculation, and checked.
import type { Calculation, Doubt } from '../../calc/calculation.ts';
import { doubtOf } from '../../calc/calculation.ts';
import type { Book } from '../book.ts';
import type { Which } from './taken.ts';

type Words = Readonly<Record<string, string>>;

/** What each of them chooses, for the help of the command line. */
export const choices: Readonly<Record<keyof Which, string>> = {
  fastener: 'a fastener of the makers’ books, by its id',
  item: 'a limit, a setting or another item of readings',
  at: 'the beginning of a position: left, right top',
  wheel: 'front or rear',
  'in-gear': 'the number of a gear',
  wrench: 'a torque wrench of the instruments, by its id',
};

function isChoice(name: string): name is keyof Which {
  return Object.hasOwn(choices, name);
}

/** Values and choices apart; a name that is an input of the calculation is a value. */
export function apart(calculation: Calculation, words: Words): { readonly given: Words; readonly which: Which } {
  const given: Record<string, string> = {};
  const which: Partial<Record<keyof Which, string>> = {};
  for (const [name, text] of Object.entries(words)) {
    if (calculation.inputs[name] === undefined && isChoice(name)) which[name] = text;
    else given[name] = text;
  }
  return { given, which };
}

function names(book: Book, name: keyof Which): readonly string[] | undefined {
  const { instruments, machine } = book.records;
  if (name === 'fastener') return [...book.fasteners.keys()];
  if (name === 'item') return book.series.map((one) => one.item);
  if (name === 'wheel') return ['front', 'rear'];
  if (name === 'in-gear') return machine.geometry.gears.map((_, index) => String(index + 1));
  if (name === 'wrench') return instruments.filter((one) => one.measures === 'torque').map((one) => one.id);
  return undefined;
}

/** A doubt for each choice that names nothing of this machine; the hint has the names, nearest first. */
export function wrongChoices(
  book: Book,
  which: Which,
  nearest: (typed: string, names: readonly string[]) => readonly string[],
): readonly Doubt[] {
  return Object.entries(which).flatMap(([name, text]) => {
    if (!isChoice(name) || text === undefined) return [];
    const known = names(book, name);
    if (known === undefined || known.includes(text)) return [];
    const doubt = doubtOf('calculation-value-wrong', name + ': this machine has no “' + text + '”', name);
    const hint = known.length === 0 ? 'none is recorded' : 'one of ' + nearest(text, known).slice(0, 6).join(', ');
    return [{ ...doubt, hint }];
  });
}
