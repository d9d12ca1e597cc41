// Anything of the book as plain data: numbers leave with their unit, decimals and origin; things named elsewhere leave as their id.
import type { Figure, Origin } from '../figure/figure.ts';
import type { Place } from '../problem/problem.ts';
import type { Money } from '../quantity/money.ts';
import { currencyDecimals } from '../quantity/money-arithmetic.ts';
import { inUnit, type Quantity, type Unit } from '../quantity/quantity.ts';

export type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

/** What is written once and named everywhere else, by identity: jobs, fasteners, limits, checks. */
export type Names = ReadonlyMap<object, string>;

/** Collects the workings that figures lead to, each once. */
export interface Workings {
  readonly idOf: (working: Extract<Origin, { kind: 'worked out' }>['working']) => string;
}

/** Makes plain data of a value; keys in alphabetical order, functions and absent values left out. `top` is written out even when it has a name. */
export function plain(value: unknown, names: Names, workings: Workings, top = false): Plain | undefined {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return value;
  if (typeof value === 'number') return Number.isFinite(value) ? value : undefined;
  if (typeof value !== 'object') return undefined;
  const name = top ? undefined : names.get(value);
  if (name !== undefined) return name;
  if (Array.isArray(value)) return value.flatMap((each) => plain(each, names, workings) ?? []);
  if (value instanceof Map) return plain(Object.fromEntries(value), names, workings);
  if (isFigure(value)) return plainFigure(value, workings);
  if (isMeasure(value)) return plainMeasure(value);
  if (isUnit(value)) return value.symbol;
  if (isMoney(value)) return { amount: amountOf(value), currency: value.currency };
  if (isPlace(value)) return plainPlace(value);
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(
    entries.flatMap(([key, inner]) => {
      const made = plain(inner, names, workings);
      return made === undefined ? [] : [[key, made]];
    }),
  );
}

/** A figure: the number in its own unit, rounded no further than a float is. */
export function plainFigure(figure: Figure, workings: Workings): Plain {
  const out = (quantity: Quantity): number => tidy(inUnit(quantity, figure.unit));
  return {
    value: out(figure.quantity),
    unit: figure.unit.symbol,
    decimals: figure.decimals,
    ...(figure.band === undefined ? {} : { low: out(figure.band.low), high: out(figure.band.high) }),
    ...(figure.uncertainty === undefined ? {} : { uncertainty: tidy(figure.uncertainty / figure.unit.factor) }),
    origin: plainOrigin(figure.origin, workings),
  };
}

function plainOrigin(origin: Origin, workings: Workings): Plain {
  if (origin.kind === 'worked out') return { kind: origin.kind, working: workings.idOf(origin.working) };
  if (origin.kind === 'published') return { kind: origin.kind, table: origin.table, row: origin.row };
  return {
    kind: origin.kind,
    at: plainPlace(origin.at),
    ...(origin.source === undefined ? {} : { source: origin.source }),
  };
}

function plainPlace(place: Place): Plain {
  return { file: place.file, path: place.path };
}

interface Measure {
  readonly quantity?: Quantity;
  readonly low?: Quantity;
  readonly high?: Quantity;
  readonly unit: Unit;
  readonly decimals: number;
  readonly text: string;
}

/** A value or range as somebody wrote it; its origin is the place of the entry that it stands in. */
function plainMeasure(measure: Measure): Plain {
  const part = (key: 'value' | 'low' | 'high', quantity: Quantity | undefined): { readonly [key: string]: number } =>
    quantity === undefined ? {} : { [key]: tidy(inUnit(quantity, measure.unit)) };
  return {
    ...part('value', measure.quantity),
    ...part('low', measure.low),
    ...part('high', measure.high),
    unit: measure.unit.symbol,
    decimals: measure.decimals,
    text: measure.text,
  };
}

/** Twelve digits are more than anything was measured to, and hide the dust of binary fractions. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

/** Major units as text, so that no reader turns pence into binary fractions. */
function amountOf(money: Money): string {
  const decimals = currencyDecimals(money.currency) ?? 2;
  const digits = String(Math.abs(money.minor)).padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  const rest = digits.slice(digits.length - decimals);
  return (money.minor < 0 ? '-' : '') + (rest === '' ? whole : whole + '.' + rest);
}

function isFigure(value: object): value is Figure {
  return 'quantity' in value && 'origin' in value && 'unit' in value;
}
function isMeasure(value: object): value is Measure {
  return 'unit' in value && 'decimals' in value && 'text' in value;
}
function isUnit(value: object): value is Unit {
  return 'symbol' in value && 'dimension' in value && 'factor' in value;
}
function isMoney(value: object): value is Money {
  return 'minor' in value && 'currency' in value;
}
function isPlace(value: object): value is Place {
  return 'file' in value && 'path' in value && Array.isArray(value.path);
}
