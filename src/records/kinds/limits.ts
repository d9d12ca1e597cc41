// Limits and settings of a maker's file: what a part is measured against, and what is set to a figure.
import type { Dimension, WrittenRange } from '../../quantity/quantity.ts';
import { readRange } from '../../quantity/read-range.ts';
import type { Limit, Setting } from '../model.ts';
import type { Desk, Spot } from '../shapes/desk.ts';
import { entry, may, need, or } from '../shapes/fields.ts';
import { readAnyRange, readValue, taken, unit } from '../shapes/measured.ts';
import { choice, commaWords, id, list, scalar, text } from '../shapes/plain.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { sourceFields, type frames } from './source-of.ts';

/** A range kept as text until it is known what kind of quantity it must be. */
export const rangeText: Shape<string> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    return words === 'none' || words === '?' ? undefined : words;
  },
  told: { kind: 'text', written: 'one value, a span or a bound, with its unit', example: '50.00 to 50.02 mm' },
};

/** Reads such a text at last; of any kind when `dimension` is not known. */
export function rangeAt(
  words: string | undefined,
  dimension: Dimension | undefined,
  spot: Spot | undefined,
  key: string,
  desk: Desk,
): WrittenRange | undefined {
  if (words === undefined) return undefined;
  const read = dimension === undefined ? readAnyRange(words) : readRange(words, dimension);
  return taken(read, { up: spot, key }, desk);
}

type Cited = { readonly page?: string; readonly corrected?: { readonly was: string; readonly why: string } } & {
  readonly frames?: NonNullable<ReturnType<(typeof frames)['read']>>;
};

export const limit: Shape<Omit<Limit, 'source'> & Cited> = andThen(
  entry({
    id: need(id, 'its permanent id', { example: 'bore' }),
    name: need(text, 'what it is called on sheets', { example: 'Cylinder bore' }),
    positions: or(list(text), [], 'where it is measured, or none', { example: '[left top, left bottom]' }),
    unit: need(unit, 'the unit it is measured in', { example: 'mm' }),
    standard: may(rangeText, 'the maker’s value for a new part'),
    limit: may(rangeText, 'past it the part is not used again', { example: '50.10 mm max' }),
    rule: may(choice('difference', 'half the difference'), 'of a bore: how the book takes taper and out-of-round'),
    instrument: may(text, 'what to measure with', { example: 'bore gauge' }),
    condition: or(commaWords, [], 'how it must be when measured', { example: 'cold, clean' }),
    of: may(text, 'the part'),
    disturbs: or(list(text), [], 'what must be proved again once it was touched'),
    ...sourceFields,
  }),
  ({ standard, limit: bound, ...rest }, spot, desk) => {
    const before = desk.problems.length;
    const asNew = rangeAt(standard, rest.unit.dimension, spot, 'standard', desk);
    const last = rangeAt(bound, rest.unit.dimension, spot, 'limit', desk);
    if (desk.problems.length > before) return undefined;
    return {
      ...rest,
      ...(asNew === undefined ? {} : { standard: asNew }),
      ...(last === undefined ? {} : { limit: last }),
    };
  },
);

export const setting: Shape<Omit<Setting, 'source'> & Cited> = andThen(
  entry({
    id: need(id, 'its permanent id', { example: 'points-gap' }),
    name: need(text, 'what it is called on sheets', { example: 'Points gap' }),
    value: or(text, '?', 'the value to set, `?` when not known', { example: '0.35 mm' }),
    range: may(rangeText, 'the values that will do', { example: '0.30 to 0.40 mm' }),
    condition: or(commaWords, [], 'how it must be when set', { example: 'full lift' }),
    of: may(text, 'the part'),
    disturbs: or(list(text), [], 'what must be set or proved again after it', { example: '[ignition-timing]' }),
    ...sourceFields,
  }),
  ({ value: words, range: span, ...rest }, spot, desk) => {
    const before = desk.problems.length;
    const value = readValue(words, undefined, { up: spot, key: 'value' }, desk);
    const dimension = value?.kind === 'read' ? value.written.unit.dimension : undefined;
    const around = rangeAt(span, dimension, spot, 'range', desk);
    if (value === undefined || desk.problems.length > before) return undefined;
    return { ...rest, value, ...(around === undefined ? {} : { range: around }) };
  },
);
