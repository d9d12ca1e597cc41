// How finely a published cell is printed: as it was published, not with the long tail of a conversion, which would look measured.
import { roundedText } from '../quantity/decimal.ts';
import { readNumber } from '../quantity/read-number.ts';

/** More digits than this no table of the trade publishes: such a cell was converted from another unit. */
const mostDigits = 8;
/** Strengths that are published as round numbers of another unit have two or three digits there. */
const convertedDigits = 3;

/** Decimals with which a cell is printed; it is reckoned with as it stands. */
export function cellDecimals(value: number, decimals: number): number {
  if (value === 0) return decimals;
  const before = Math.floor(Math.log10(Math.abs(value))) + 1;
  return before + decimals <= mostDigits ? decimals : Math.min(decimals, Math.max(0, convertedDigits - before));
}

/** A cell of a column that has a unit, as the page of its table shows it. */
export function cellText(cell: string): string {
  const read = readNumber(cell);
  if (!read.ok) return cell;
  const { value, decimals } = read.value;
  const printed = cellDecimals(value, decimals);
  return printed === decimals ? cell : roundedText(value, printed);
}
