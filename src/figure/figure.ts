// A figure is a number fit to print: quantity, the unit and decimals its writer chose, uncertainty, and where it comes from.
import type { Place } from '../problem/problem.ts';
import type { Dimension, Quantity, Unit } from '../quantity/quantity.ts';

/** Where a figure comes from; every number on paper can be followed back through it. */
export type Origin =
  | { readonly kind: 'written'; readonly at: Place; readonly source?: string }
  | { readonly kind: 'published'; readonly table: string; readonly row: string }
  | { readonly kind: 'worked out'; readonly working: Working };

/** The shown derivation of a worked-out figure. */
export interface Working {
  /** Id of the calculation in the list calc/list.ts, or of the rule in book/. */
  readonly calculation: string;
  /** The formula as it is set on paper, for example `V = π/4 · b² · s · n`. */
  readonly formula: string;
  readonly inputs: readonly { readonly symbol: string; readonly name: string; readonly figure: Figure }[];
  readonly source: string;
  readonly remarks?: readonly string[];
}

export interface Figure<D extends Dimension = Dimension> {
  readonly quantity: Quantity<D>;
  readonly unit: Unit<D>;
  readonly decimals: number;
  /** Expanded uncertainty (half width), same dimension, SI. */
  readonly uncertainty?: Quantity<D>;
  /** Lowest and highest where the figure is a band rather than a point, SI. */
  readonly band?: { readonly low: Quantity<D>; readonly high: Quantity<D> };
  readonly origin: Origin;
}
