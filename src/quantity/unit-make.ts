// How a unit is declared: symbol, factor to SI, and every spelling the trade uses.
import type { Dimension, Unit } from './quantity.ts';

/** A plain unit: `factor` SI units to one of it. */
export function unit<D extends Dimension>(
  dimension: D,
  symbol: string,
  factor: number,
  ...spellings: string[]
): Unit<D> {
  return { symbol, dimension, factor, spellings };
}

/** A temperature scale: `offset` is the SI value of its zero. */
export function scale<D extends Dimension>(
  dimension: D,
  symbol: string,
  factor: number,
  offset: number,
  ...spellings: string[]
): Unit<D> {
  return { symbol, dimension, factor, offset, spellings };
}

/** A unit that counts the other way round: mpg against l/100 km, 1:25 against 0.04:1. */
export function inverse<D extends Dimension>(
  dimension: D,
  symbol: string,
  factor: number,
  ...spellings: string[]
): Unit<D> {
  return { symbol, dimension, factor, inverse: true, spellings };
}

// Exact by definition: the pound (1959 agreement), standard gravity (CGPM 1901), the inch, both gallons.
export const standardGravity = 9.80665;
export const poundMass = 0.45359237;
export const inchMetres = 0.0254;
export const imperialGallon = 4.54609e-3;
export const usGallon = 231 * 0.0254 ** 3;
export const poundForceNewtons = poundMass * standardGravity;
