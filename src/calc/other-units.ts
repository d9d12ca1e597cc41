// One value in every unit of its kind, and what it would be if the number had been meant in another of them: where unit slips show.
import { formatDecimal } from '../quantity/decimal.ts';
import { printQuantity, withUnit } from '../figure/print.ts';
import { inUnit, of } from '../quantity/quantity.ts';
import type { Unit, Written } from '../quantity/quantity.ts';
import { units } from '../quantity/units.ts';

/** A line of the table: the same thing in this unit, and the same number taken as this unit. */
export interface InUnit {
  readonly unit: string;
  readonly same: string;
  /** The number as written, with this unit after it. */
  readonly instead: string;
  /** What that would be in the unit that was written. */
  readonly would: string;
}

/** Figures that are kept, so that a slip is seen and a rounding is not mistaken for one. */
const kept = 4;

/** Decimals that leave four figures of a number, six at most. */
function decimalsFor(value: number): number {
  if (value === 0 || !Number.isFinite(value)) return 0;
  return Math.max(0, Math.min(6, kept - 1 - Math.floor(Math.log10(Math.abs(value)))));
}

function printedIn(quantity: Written['quantity'], unit: Unit): string {
  return printQuantity(quantity, unit, decimalsFor(inUnit(quantity, unit)));
}

/** The table for a value as somebody wrote it, the units in the order of their list; the unit that was written comes first. */
export function otherUnits(value: Written): readonly InUnit[] {
  const { unit, quantity, decimals } = value;
  const all: readonly Unit[] = units[unit.dimension];
  const number = inUnit(quantity, unit);
  const others = all.filter((one) => one.symbol !== unit.symbol);
  return [unit, ...others].map((one) => ({
    unit: one.symbol === '' ? '1' : one.symbol,
    same: one === unit ? printQuantity(quantity, unit, decimals) : printedIn(quantity, one),
    instead: withUnit(formatDecimal(number, decimals), one),
    would: one === unit ? '' : printedIn(of(number, one), unit),
  }));
}
