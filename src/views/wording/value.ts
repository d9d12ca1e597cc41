// Values, standards and limits as their writer chose to write them: unit and decimals kept.
import { printQuantity } from '../../figure/print.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import { of, type Dimension, type Written } from '../../quantity/quantity.ts';
import { millilitre } from '../../quantity/units.ts';
import type { Value } from '../../records/model.ts';

/** A written quantity, printed back with its own unit and decimals: `0.35 mm`. */
export function writtenText<D extends Dimension>(value: Written<D>): string {
  const isTime = value.unit.dimension === 'duration' || value.unit.dimension === 'running time';
  if (isTime && value.quantity >= 60) return durationText(value.quantity);
  const asWritten = isFraction.test(value.text)
    ? value.text.trim().replaceAll(/\s+/gu, '\u00a0')
    : printQuantity<D>(value.quantity, value.unit, value.decimals);
  return value.unit.dimension === 'volume' && !isMetricVolume.test(value.unit.symbol)
    ? `${asWritten} (${printQuantity(of<'volume'>(value.quantity / millilitre.factor, millilitre), millilitre, 0)})`
    : asWritten;
}

/** Seconds as a clock says them: `3 h 20 min`, `45 min`. */
function durationText(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  const words = [
    ...(hours > 0 ? [`${formatDecimal(hours, 0)}\u00a0h`] : []),
    ...(rest > 0 ? [`${formatDecimal(rest, 0)}\u00a0min`] : []),
  ];
  return words.join('\u00a0');
}

/** `11/64 in`, `7/16"`, `2½ turns`: as a rule or a book says it, and not in decimals. */
const isFraction = /^\s*(?:(?:\d+\s+)?\d+\/\d+(?!\d)|(?:\d+\s*)?[¼½¾⅐-⅞])/u;
const isMetricVolume = /^(?:m?l|cc|cm³|m³)$/u;

/** A reading: the value, the words that could not be read in full, or nothing where it is not known. */
export function valueText(value: Value | undefined): string | undefined {
  if (value === undefined || value.kind === 'unknown') return undefined;
  return value.kind === 'words' ? value.text : printedOnce(value.written);
}

/** The same value of many readings is one and the same (see records/shapes/read-once.ts), and a page, a plot and a grid print it. */
const printed = new WeakMap<Written, string>();

function printedOnce(value: Written): string {
  const before = printed.get(value);
  if (before !== undefined) return before;
  const text = writtenText(value);
  printed.set(value, text);
  return text;
}

/** How a reading was taken, `cold, dry`; empty text when nothing was said. */
export function conditionText(condition: readonly string[]): string {
  return condition.join(', ');
}
