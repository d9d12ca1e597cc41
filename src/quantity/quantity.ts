// Numbers with a dimension: SI inside, one way in (`of`), one way out (`inUnit`).
declare const dimension: unique symbol;

/** Kinds of thing, finer than physics: torque is not energy, gauge pressure is not absolute pressure. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'angle'
  | 'crank angle'
  | 'mass'
  | 'force'
  | 'torque'
  | 'stress'
  | 'gauge pressure'
  | 'absolute pressure'
  | 'temperature'
  | 'temperature difference'
  | 'duration'
  | 'calendar time'
  | 'running time'
  | 'distance ridden'
  | 'speed'
  | 'rotation speed'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'capacitance'
  | 'power'
  | 'charge'
  | 'density'
  | 'stiffness'
  | 'turns'
  | 'ratio'
  | 'share'
  | 'count'
  | 'flow'
  | 'fuel use'
  | 'relative humidity'
  | 'specific gravity';

/** A plain number at run time, in the SI unit of its dimension. */
export type Quantity<D extends Dimension = Dimension> = number & { readonly [dimension]: D };

export interface Unit<D extends Dimension = Dimension> {
  /** As printed: `N·m`, `lbf·ft`, `mm`, `thou`. Unique over all units of one dimension. */
  readonly symbol: string;
  readonly dimension: D;
  /** SI units per one of this unit. */
  readonly factor: number;
  /** SI value of this unit's zero (temperatures). */
  readonly offset?: number;
  /** The unit counts the other way round (mpg against l/100 km). */
  readonly inverse?: boolean;
  /** Every accepted spelling besides the symbol. */
  readonly spellings: readonly string[];
}

/** The only way into a quantity: a number and the unit it is in. */
export function of<D extends Dimension>(value: number, unit: Unit<D>): Quantity<D> {
  const si = unit.inverse === true ? unit.factor / value : value * unit.factor + (unit.offset ?? 0);
  return si as Quantity<D>;
}

/** The only way out: the number of `unit` in a quantity. NoInfer keeps metres out of newton-metres. */
export function inUnit<D extends Dimension>(quantity: Quantity<D>, unit: Unit<NoInfer<D>>): number {
  if (unit.inverse === true) return unit.factor / quantity;
  return (quantity - (unit.offset ?? 0)) / unit.factor;
}

/** A quantity as somebody wrote it: unit and decimals are kept and printed back. */
export interface Written<D extends Dimension = Dimension> {
  readonly quantity: Quantity<D>;
  readonly unit: Unit<D>;
  readonly decimals: number;
  readonly text: string;
}

/** A standard or a limit as written: one bound, two bounds, or a nominal with plus/minus. */
export interface WrittenRange<D extends Dimension = Dimension> {
  readonly low?: Quantity<D>;
  readonly high?: Quantity<D>;
  readonly unit: Unit<D>;
  readonly decimals: number;
  readonly text: string;
}

/** Why a text is not a quantity; the place is added by whoever knows it. */
export interface Refusal {
  readonly code:
    | 'number-unreadable'
    | 'number-ambiguous'
    | 'unit-missing'
    | 'unit-unknown'
    | 'unit-wrong'
    | 'date-unreadable'
    | 'money-unreadable';
  readonly message: string;
  readonly hint?: string;
}

/** Either what was read, or why it was not. */
export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly why: Refusal };

/** A quantity from a number already in SI, for sums and differences of quantities of one dimension. */
export function ofSi<D extends Dimension>(si: number): Quantity<D> {
  return si as Quantity<D>;
}
