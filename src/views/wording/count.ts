// Whole numbers in sentences; every number on paper goes through the one decimal writer.
import { formatDecimal } from '../../quantity/decimal.ts';

/** A whole number as printed: `8`, `12 480` with a thin space. */
export function count(number: number): string {
  return formatDecimal(number, 0);
}

/** `1 check`, `3 checks`: the number with the word that fits it. */
export function countOf(number: number, one: string, more: string): string {
  return `${count(number)}\u00a0${number === 1 ? one : more}`;
}

/** `8 ×`, for fasteners and parts. */
export function times(number: number): string {
  return `${count(number)}\u00a0×`;
}
