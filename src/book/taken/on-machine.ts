// A calculation on a machine: what is not given is taken from its records, and said; one that needs another's result asks it first.
import type { Calculation, Value, Values, Worked } from '../../calc/calculation.ts';
import { calculationById } from '../../calc/list.ts';
import type { Figure } from '../../figure/figure.ts';
import type { Input } from '../../calc/input.ts';
import type { Book } from '../book.ts';
import { takerOf } from './inputs.ts';
import type { Taken, Which } from './taken.ts';

export interface TakenInput extends Taken {
  readonly input: string;
}

export interface OnMachine {
  readonly calculation: Calculation;
  readonly taken: readonly TakenInput[];
  readonly worked: Worked;
}

/** Inputs that another calculation gives, from the same machine. */
const chained: Readonly<Record<string, { readonly calculation: string; readonly output: string }>> = {
  'road-speed/ratio': { calculation: 'overall-ratio', output: 'ratio' },
  'road-speed/circumference': { calculation: 'rolling-circumference', output: 'circumference' },
  'clock-factor/circumference before': { calculation: 'rolling-circumference', output: 'circumference' },
  'cranking-pressure/clearance volume': { calculation: 'clearance-volume', output: 'clearance' },
  'compression-ratio/clearance': { calculation: 'clearance-volume', output: 'clearance' },
  'charge-time/charge': { calculation: 'battery-volts', output: 'charge' },
  'jet-change/density before': { calculation: 'standard-atmosphere', output: 'density' },
  'mixture-shift/density before': { calculation: 'standard-atmosphere', output: 'density' },
};

function fits(input: Input, value: Value): boolean {
  if (input.kind === 'words') return typeof value === 'string';
  if (typeof value === 'string') return false;
  const figures: readonly Figure[] = 'unit' in value ? [value] : value;
  if (input.kind === 'quantity' && figures.length !== 1) return false;
  return figures.every((figure) => figure.unit.dimension === input.unit.dimension);
}

function takeOne(book: Book, which: Which, calculation: string, name: string): Taken | undefined {
  const first = chained[calculation + '/' + name];
  if (first === undefined) return takerOf(calculation, name)?.({ book, which });
  const before = calculationOn(book, first.calculation, {}, which);
  const value = before?.worked.figures[first.output];
  if (before === undefined || value === undefined) return undefined;
  const from = before.taken.map((one) => one.input + ' of ' + one.from).join('; ');
  return { value, from: 'worked out: ' + before.calculation.name + ' (' + from + ')' };
}

/** What the machine says of the inputs that are not given, in their order. */
export function takeFrom(book: Book, calculation: Calculation, given: Values, which: Which): readonly TakenInput[] {
  return Object.entries(calculation.inputs).flatMap(([name, input]) => {
    if (given[name] !== undefined) return [];
    const taken = takeOne(book, which, calculation.id, name);
    return taken !== undefined && fits(input, taken.value) ? [{ input: name, ...taken }] : [];
  });
}

/** Works a calculation out with what is given and what the machine says; undefined when there is no such calculation. */
export function calculationOn(book: Book, id: string, given: Values = {}, which: Which = {}): OnMachine | undefined {
  const calculation = calculationById(id);
  if (calculation === undefined) return undefined;
  const taken = takeFrom(book, calculation, given, which);
  const values = { ...Object.fromEntries(taken.map((one) => [one.input, one.value])), ...given };
  return { calculation, taken, worked: calculation.run(values) };
}
