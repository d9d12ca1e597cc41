// Values that came from the machine or from another calculation and were not written over: they keep their uncertainty.
import type { Calculation, Value, Worked } from '../calc/calculation.ts';
import { withWidth, type Width } from '../calc/typed-figure.ts';
import { readValues } from '../calc/work.ts';
import { withItsUnit } from './typed-values.ts';

/** A text as it was filled in, and how wide each of its figures is. */
export interface Carried {
  readonly text: string;
  readonly widths: readonly (Width | null)[];
}

/** What the fields of a calculation say, worked out: read and run as on the command line. */
export function workedFrom(
  calculation: Calculation,
  typed: Readonly<Record<string, string>>,
  carried: ReadonlyMap<string, Carried>,
  asked: Readonly<Record<string, string>> = {},
): Worked {
  const given = Object.entries(typed).flatMap(([name, text]) => {
    const input = calculation.inputs[name];
    return input === undefined || text.trim() === '' ? [] : [[name, withItsUnit(text, input, asked)] as const];
  });
  const { values, doubts } = readValues(calculation, Object.fromEntries(given));
  if (doubts.length > 0) return { figures: {}, words: {}, remarks: [], doubts };
  const wide = Object.entries(values).map(([name, value]) => {
    const kept = carried.get(name);
    return [name, kept === undefined || kept.text !== typed[name] ? value : asWide(value, kept.widths)] as const;
  });
  return calculation.run(Object.fromEntries(wide));
}

function asWide(value: Value | undefined, widths: Carried['widths']): Value | undefined {
  if (value === undefined || typeof value === 'string') return value;
  const [only] = widths;
  if ('unit' in value) return only === undefined || only === null ? value : withWidth(value, only);
  return value.map((figure, index) => {
    const width = widths[index];
    return width === undefined || width === null ? figure : withWidth(figure, width);
  });
}
