// How a figure is set: the number, a no-break space, the unit; never parted, never rounded twice.
import type { Place } from '../problem/problem.ts';
import { formatDecimal } from '../quantity/decimal.ts';
import { inUnit } from '../quantity/quantity.ts';
import type { Dimension, Quantity, Unit, Written, WrittenRange } from '../quantity/quantity.ts';
import type { Figure } from './figure.ts';

/** U+00A0: the value and its unit stay on one line. */
export const noBreakSpace = '\u00a0';

/** A number already formatted, with its unit as that unit is set: `25:1`, `12°`, `24.5 N·m`. */
export function withUnit<D extends Dimension>(number: string, unit: Unit<D>): string {
  const symbol = unit.symbol;
  if (symbol === '') return number;
  if (symbol.startsWith(':') || symbol === '°') return number + symbol;
  if (symbol.endsWith(':')) return symbol + number;
  const word =
    number === '1' && (symbol === 'turns' || symbol === 'months' || symbol === 'years') ? symbol.slice(0, -1) : symbol;
  return number + noBreakSpace + word.replaceAll(' ', noBreakSpace);
}

/** A quantity in a unit with so many decimals. */
export function printQuantity<D extends Dimension>(quantity: Quantity<D>, unit: Unit<D>, decimals: number): string {
  return withUnit(formatDecimal(inUnit(quantity, unit), decimals), unit);
}

/** Two bounds in one unit: `9 to 11 N·m`; `12 N·m` when they print alike. */
function printBand<D extends Dimension>(low: Quantity<D>, high: Quantity<D>, unit: Unit<D>, decimals: number): string {
  const [a, b] = [formatDecimal(inUnit(low, unit), decimals), formatDecimal(inUnit(high, unit), decimals)];
  const [first, second] = unit.inverse === true ? [b, a] : [a, b];
  if (first === second) return withUnit(first, unit);
  const lead = unit.dimension === 'ratio' ? withUnit(first, unit) : first;
  return lead + noBreakSpace + 'to' + noBreakSpace + withUnit(second, unit);
}

/** `24.5 N·m`; a figure that is a band prints both ends. */
export function printFigure<D extends Dimension>(figure: Figure<D>): string {
  return printIn(figure, figure.unit, figure.decimals);
}

/** The same figure in another unit of its dimension. */
export function printIn<D extends Dimension>(figure: Figure<D>, unit: Unit<NoInfer<D>>, decimals: number): string {
  if (figure.band === undefined) return printQuantity<D>(figure.quantity, unit, decimals);
  return printBand<D>(figure.band.low, figure.band.high, unit, decimals);
}

/** A figure with its uncertainty, where one is known: `50.06 mm ± 0.01 mm`. */
export function printWithUncertainty<D extends Dimension>(figure: Figure<D>): string {
  if (figure.uncertainty === undefined || figure.unit.inverse === true) return printFigure(figure);
  const half = formatDecimal(figure.uncertainty / figure.unit.factor, Math.max(figure.decimals, 1));
  return printFigure(figure) + noBreakSpace + '±' + noBreakSpace + withUnit(half, figure.unit);
}

const fraction = /\d[/\u2044]\d/u;

/** A written range as it is set: `9 to 11 N·m`, `50.10 mm max`, `2.0 mm min`; fractions of an inch as the book has them, since 11/32 has no short decimals. */
export function printRange<D extends Dimension>(range: WrittenRange<D>): string {
  const { low, high, unit, decimals } = range;
  if (unit.dimension === 'length' && fraction.test(range.text))
    return range.text.replaceAll(/ (?!to )(?<! to )/gu, noBreakSpace);
  if (low !== undefined && high !== undefined) return printBand(low, high, unit, decimals);
  if (high !== undefined) return printQuantity(high, unit, decimals) + noBreakSpace + 'max';
  if (low !== undefined) return printQuantity(low, unit, decimals) + noBreakSpace + 'min';
  return range.text;
}

/** A value that somebody wrote, as a figure that knows where. */
export function written<D extends Dimension>(value: Written<D>, at: Place, source?: string): Figure<D> {
  const origin = source === undefined ? ({ kind: 'written', at } as const) : ({ kind: 'written', at, source } as const);
  return { quantity: value.quantity, unit: value.unit, decimals: value.decimals, origin };
}
