// Runs a calculation from text, as the command line and the examples give it: `bore=50 mm`, lists parted by semicolons.
import { written } from '../figure/print.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import type { Figure } from '../figure/figure.ts';
import type { Calculation, Doubt, Value, Values, Worked } from './calculation.ts';
import { doubtOf } from './calculation.ts';
import type { Input } from './input.ts';
import { calculationById } from './list.ts';

interface ReadValue {
  readonly value?: Value;
  readonly doubts: readonly Doubt[];
}

function readOne(
  name: string,
  text: string,
  input: Exclude<Input, { kind: 'words' }>,
): { readonly figure?: Figure; readonly doubts: readonly Doubt[] } {
  const read = readQuantity(text, input.unit.dimension);
  if (read.ok) return { figure: written(read.value, { file: '', path: [name] }), doubts: [] };
  const doubt = doubtOf('calculation-value-wrong', input.name + ': ' + read.why.message, name);
  return { doubts: [read.why.hint === undefined ? doubt : { ...doubt, hint: read.why.hint }] };
}

function readValue(name: string, text: string, input: Input | undefined): ReadValue {
  if (input === undefined)
    return { doubts: [doubtOf('calculation-value-wrong', '“' + name + '” is not a value of this calculation', name)] };
  if (input.kind === 'words') return { value: text, doubts: [] };
  const reads = (input.kind === 'list' ? text.split(';') : [text]).map((part) => readOne(name, part, input));
  const doubts = reads.flatMap((read) => read.doubts);
  const figures = reads.flatMap((read) => (read.figure === undefined ? [] : [read.figure]));
  if (input.kind === 'list') return { value: figures, doubts };
  const only = figures[0];
  return only === undefined ? { doubts } : { value: only, doubts };
}

/** Values of a calculation from text, with a doubt for each that could not be read or is not one of its inputs. */
export function readValues(
  calculation: Calculation,
  given: Readonly<Record<string, string>>,
): { readonly values: Values; readonly doubts: readonly Doubt[] } {
  const reads = Object.entries(given).map(
    ([name, text]) => [name, readValue(name, text, calculation.inputs[name])] as const,
  );
  return {
    values: Object.fromEntries(reads.map(([name, read]) => [name, read.value])),
    doubts: reads.flatMap(([, read]) => read.doubts),
  };
}

/**
 * Works out a calculation by its id from values written as a person writes them. An unknown id, unknown names and unreadable values
 * are doubts; nothing is worked out when one of them is a problem.
 * @example workOut('displacement', { bore: '50 mm', stroke: '44.5 mm', cylinders: '2' })
 */
export function workOut(id: string, given: Readonly<Record<string, string>>): Worked {
  const calculation = calculationById(id);
  const nothing = { figures: {}, words: {}, remarks: [] };
  if (calculation === undefined)
    return { ...nothing, doubts: [doubtOf('calculation-unknown', '“' + id + '” is not a calculation')] };
  const { values, doubts } = readValues(calculation, given);
  return doubts.length > 0 ? { ...nothing, doubts } : calculation.run(values);
}
