// What goes into a calculation: quantities, words and lists, each with its symbol, unit and the bounds in which the formula holds.
import type { Dimension, Unit } from '../quantity/quantity.ts';

/** Bounds in the input's own unit; outside them nothing is worked out. `usual` bounds raise a query instead. */
export interface Bounds {
  readonly low?: number;
  readonly high?: number;
  /** Must be greater than this (`above: 0` for lengths that divide). */
  readonly above?: number;
  readonly whole?: boolean;
  readonly optional?: boolean;
  readonly usual?: readonly [number, number];
}

export interface QuantityInput extends Bounds {
  readonly kind: 'quantity';
  readonly symbol: string;
  readonly name: string;
  readonly unit: Unit;
}

export interface ListInput extends Bounds {
  readonly kind: 'list';
  readonly symbol: string;
  readonly name: string;
  readonly unit: Unit;
}

export interface WordsInput {
  readonly kind: 'words';
  readonly symbol: string;
  readonly name: string;
  /** The words that are understood; absent when any text is (a thread, a tyre code). */
  readonly among?: readonly string[];
  readonly optional?: boolean;
}

export type Input = QuantityInput | ListInput | WordsInput;
export type Inputs = Readonly<Record<string, Input>>;

/** A quantity that goes in, in the unit of the formula. */
export function quantity<D extends Dimension>(
  symbol: string,
  name: string,
  unit: Unit<D>,
  bounds: Bounds = {},
): QuantityInput {
  return { kind: 'quantity', symbol, name, unit, ...bounds };
}

/** Several values of one kind. */
export function list<D extends Dimension>(symbol: string, name: string, unit: Unit<D>, bounds: Bounds = {}): ListInput {
  return { kind: 'list', symbol, name, unit, ...bounds };
}

/** Words: one of a few, or any text. */
export function words(
  symbol: string,
  name: string,
  more: { readonly among?: readonly string[]; readonly optional?: boolean } = {},
): WordsInput {
  return { kind: 'words', symbol, name, ...more };
}

/** What comes out: a quantity with the unit of the formula and the decimals it is printed with, or words. */
export interface QuantityOutput {
  readonly kind: 'quantity';
  readonly symbol: string;
  readonly name: string;
  readonly unit: Unit;
  readonly decimals: number;
  /** Print in the unit in which this input was given. */
  readonly like?: string;
}

export interface WordsOutput {
  readonly kind: 'words';
  readonly name: string;
}

export type Output = QuantityOutput | WordsOutput;
export type Outputs = Readonly<Record<string, Output>>;

/** A quantity that comes out; `like` names the input whose unit it is printed in. */
export function result<D extends Dimension>(
  symbol: string,
  name: string,
  unit: Unit<D>,
  decimals: number,
  like?: string,
): QuantityOutput {
  const base = { kind: 'quantity', symbol, name, unit, decimals } as const;
  return like === undefined ? base : { ...base, like };
}

/** Words that come out: a verdict, a name, an advice. */
export function saying(name: string): WordsOutput {
  return { kind: 'words', name };
}
