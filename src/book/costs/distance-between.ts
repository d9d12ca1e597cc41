// The distance between two readings as a figure of its own, which says what it was taken from.
import type { Figure } from '../../figure/figure.ts';
import { of } from '../../quantity/quantity.ts';
import { metreRidden } from '../../quantity/units.ts';

type Distance = Figure<'distance ridden'>;

/** How the working names its two ends. */
export interface Ends {
  readonly formula: string;
  readonly from: { readonly symbol: string; readonly name: string };
  readonly to: { readonly symbol: string; readonly name: string };
  readonly source: string;
}

/** `to` less `from`, in the unit of `to`; undefined where it would be less than nothing. */
export function distanceBetween(from: Distance, to: Distance, ends: Ends): Distance | undefined {
  if (to.quantity < from.quantity) return undefined;
  const inputs = [
    { ...ends.to, figure: to },
    { ...ends.from, figure: from },
  ];
  const working = { calculation: 'odometer', formula: ends.formula, inputs, source: ends.source };
  return {
    quantity: of(to.quantity - from.quantity, metreRidden),
    unit: to.unit,
    decimals: 0,
    origin: { kind: 'worked out', working },
  };
}
