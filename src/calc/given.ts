// How a calculation asks for its values: plain numbers in the unit of the formula; what it used is noted for the working.
import type { Figure, Working } from '../figure/figure.ts';
import { codes } from '../problem/codes.ts';
import type { ProblemCode } from '../problem/codes.ts';
import { inUnit } from '../quantity/quantity.ts';
import type { Dimension, Unit } from '../quantity/quantity.ts';
import type { Doubt, Values } from './calculation.ts';
import type { Input, Inputs } from './input.ts';

export interface Notes {
  readonly used: Working['inputs'][number][];
  readonly remarks: string[];
  readonly doubts: Doubt[];
}

/** What `work` is handed. Asking for a value that is not an input is a compile error; for one not given, a bug. */
export interface Given<I extends Inputs> {
  readonly number: <D extends Dimension>(name: keyof I & string, unit: Unit<D>) => number;
  readonly maybe: <D extends Dimension>(name: keyof I & string, unit: Unit<D>) => number | undefined;
  readonly list: <D extends Dimension>(name: keyof I & string, unit: Unit<D>) => readonly number[];
  readonly words: (name: keyof I & string) => string;
  readonly figure: (name: keyof I & string) => Figure | undefined;
  /** A published value that was used; noted in the working. */
  readonly use: (symbol: string, name: string, figure: Figure) => void;
  readonly remark: (text: string) => void;
  readonly doubt: (code: ProblemCode, message: string) => void;
}

function figuresOf(value: Values[string]): readonly Figure[] {
  if (value === undefined || typeof value === 'string') return [];
  return 'unit' in value ? [value] : value;
}

function noteInput(notes: Notes, input: Input, value: Values[string]): void {
  if (typeof value === 'string' && value !== '') notes.remarks.push(input.name + ': ' + value);
  for (const figure of figuresOf(value)) notes.used.push({ symbol: input.symbol, name: input.name, figure });
}

/** Makes the asking side for one run. */
export function makeGiven<I extends Inputs>(inputs: I, values: Values, notes: Notes): Given<I> {
  for (const [name, input] of Object.entries(inputs)) noteInput(notes, input, values[name]);
  const figure = (name: string): Figure | undefined => figuresOf(values[name])[0];
  const maybe = <D extends Dimension>(name: string, unit: Unit<D>): number | undefined => {
    const found = figure(name);
    return found === undefined ? undefined : inUnit<Dimension>(found.quantity, unit);
  };
  const number = <D extends Dimension>(name: string, unit: Unit<D>): number => {
    const found = maybe(name, unit);
    if (found === undefined) throw new Error('a calculation asked for ' + name + ', which is optional and not given');
    return found;
  };
  const list = <D extends Dimension>(name: string, unit: Unit<D>): readonly number[] =>
    figuresOf(values[name]).map((one) => inUnit<Dimension>(one.quantity, unit));
  const words = (name: string): string => {
    const value = values[name];
    return typeof value === 'string' ? value : '';
  };
  return {
    number,
    maybe,
    list,
    words,
    figure,
    use: (symbol, name, used) => void notes.used.push({ symbol, name, figure: used }),
    remark: (text) => void notes.remarks.push(text),
    doubt: (code, message) => void notes.doubts.push({ code, severity: codes[code], message }),
  };
}
