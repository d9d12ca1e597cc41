// Narrowing of figures to one dimension: the check is made, so that no cast is needed.
import type { Dimension, Quantity, Unit } from '../quantity/quantity.ts';
import { of } from '../quantity/quantity.ts';
import type { Figure, Origin } from './figure.ts';

/** Whether a figure is of this dimension. */
export function isOf<D extends Dimension>(figure: Figure, dimension: D): figure is Figure<D> {
  return figure.unit.dimension === dimension;
}

/** A figure from a plain number in its unit. */
export function figureOf<D extends Dimension>(
  value: number,
  unit: Unit<D>,
  decimals: number,
  origin: Origin,
): Figure<D> {
  return { quantity: of(value, unit), unit, decimals, origin };
}

/** A half width in the unit of a figure, as a quantity: scales without their offset. */
export function halfWidth<D extends Dimension>(value: number, unit: Unit<D>): Quantity<D> {
  return of(value, { symbol: unit.symbol, dimension: unit.dimension, factor: unit.factor, spellings: [] });
}
