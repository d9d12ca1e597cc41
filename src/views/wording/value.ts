// Values, standards and limits as their writer chose to write them: unit and decimals kept.
import { printFigure, written } from '../../figure/print.ts';
import type { Dimension, Written } from '../../quantity/quantity.ts';
import type { Place } from '../../problem/problem.ts';
import type { Value } from '../../records/model.ts';

const nowhere: Place = { file: '', path: [] };

/** A written quantity, printed back with its own unit and decimals: `0.35 mm`. */
export function writtenText<D extends Dimension>(value: Written<D>): string {
  return printFigure(written(value, nowhere));
}

/** A reading: the value, the words that could not be read in full, or nothing where it is not known. */
export function valueText(value: Value | undefined): string | undefined {
  if (value === undefined || value.kind === 'unknown') return undefined;
  return value.kind === 'words' ? value.text : writtenText(value.written);
}

/** How a reading was taken, `cold, dry`; empty text when nothing was said. */
export function conditionText(condition: readonly string[]): string {
  return condition.join(', ');
}
