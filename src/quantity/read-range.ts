// A standard or a limit as written: `9 to 11 N·m`, `12 ± 2 N·m`, `50.10 mm max`, or one value.
import type { Dimension, Quantity, Read, Written, WrittenRange } from './quantity.ts';
import { readQuantity } from './read-quantity.ts';
import { readNumber, refuse, tooLong } from './read-number.ts';

const plusMinus = /^(.+?)\s*(?:±|\+\/-|\+-|\+\/−)\s*(.+)$/;
const unequal = /^(.+?)\s*\+\s*([\d.,]+)\s*[/,; ]\s*[-−]\s*([\d.,]+)\s*(.*)$/;
const most =
  /^(?:(?:max(?:imum)?\.?|at most|up to|not (?:over|above)|under|less than|below|[≤<])\s*(.+)|(.+?)\s*(?:max(?:imum)?\.?|or less|at most))$/i;
const least =
  /^(?:(?:min(?:imum)?\.?|at least|not (?:under|below)|over|more than|above|from|[≥>])\s*(.+)|(.+?)\s*(?:\smin(?:imum)?\.?|\sor more|\sat least))$/i;
const between = /^(.*?[\d½⅓⅔¼¾⅛⅜⅝⅞"′″%°\p{L}²³)])\s*(?:\bto\b|…|\.{2,3}|\s[-–—]\s|[–—]|-)\s*([+−-]?[\d.½¼¾⅛⅜⅝⅞].*)$/u;
const oneMixed = /^[+−-]?\d+-\d+[/\u2044]\d+(?![\d/])\s*[^\d]*$/;

interface Bounds<D extends Dimension> {
  readonly low?: Quantity<D>;
  readonly high?: Quantity<D>;
}

function range<D extends Dimension>(
  bounds: Bounds<D>,
  like: Written<D>,
  decimals: number,
  text: string,
): Read<WrittenRange<D>> {
  return { ok: true, value: { ...bounds, unit: like.unit, decimals, text } };
}

/** The unit that follows the last number, to lend it to a first number that has none. */
function trailingUnit(text: string): string {
  return /^[+−-]?[\d.,\s/\u2044½⅓⅔¼¾⅛⅜⅝⅞-]*(.*)$/.exec(text)?.[1] ?? '';
}

function readWithUnitOf<D extends Dimension>(text: string, other: string, dimension: D): Read<Written<D>> {
  const alone = readQuantity(text, dimension);
  if (alone.ok || alone.why.code !== 'unit-missing') return alone;
  return readQuantity(text + ' ' + trailingUnit(other), dimension);
}

function readBetween<D extends Dimension>(
  first: string,
  second: string,
  dimension: D,
  text: string,
): Read<WrittenRange<D>> {
  const high = readWithUnitOf(second, first, dimension);
  if (!high.ok) return high;
  const low = readWithUnitOf(first, second, dimension);
  if (!low.ok) return low;
  const decimals = Math.max(low.value.decimals, high.value.decimals);
  const upsideDown = low.value.quantity > high.value.quantity;
  if (upsideDown && high.value.unit.inverse === true) {
    return range({ low: high.value.quantity, high: low.value.quantity }, high.value, decimals, text);
  }
  if (upsideDown)
    return refuse(
      'number-unreadable',
      `“${text}” runs from the larger to the smaller`,
      'write the smaller value first',
    );
  return range({ low: low.value.quantity, high: high.value.quantity }, high.value, decimals, text);
}

/** A tolerance added to a nominal: both read in one unit, so that °C stays a scale and not a step. */
function readAround<D extends Dimension>(
  nominal: string,
  plus: string,
  minus: string,
  dimension: D,
  text: string,
): Read<WrittenRange<D>> {
  const unit = trailingUnit(plus) || trailingUnit(nominal);
  const bare = nominal.slice(0, nominal.length - trailingUnit(nominal).length);
  const centre = readQuantity(bare + ' ' + (trailingUnit(nominal) || unit), dimension);
  if (!centre.ok) return centre;
  const above = readNumber(plus.slice(0, plus.length - trailingUnit(plus).length));
  const below = readNumber(minus.slice(0, minus.length - trailingUnit(minus).length));
  if (!above.ok) return above;
  if (!below.ok) return below;
  const step = readQuantity('1 ' + unit, dimension);
  if (!step.ok) return step;
  const one = step.value.unit.factor;
  const decimals = Math.max(centre.value.decimals, above.value.decimals, below.value.decimals);
  const low = centre.value.quantity - below.value.value * one;
  const high = centre.value.quantity + above.value.value * one;
  return range({ low: low as Quantity<D>, high: high as Quantity<D> }, centre.value, decimals, text);
}

/** `50.10 mm max`, `at least 2.0 mm`; undefined when no word of a bound stands there. */
function readBound<D extends Dimension>(text: string, dimension: D): Read<WrittenRange<D>> | undefined {
  const upper = most.exec(text);
  const lower = upper === null ? least.exec(text) : null;
  const found = upper ?? lower;
  if (found === null) return undefined;
  const bound = readQuantity(found[1] ?? found[2] ?? '', dimension);
  if (!bound.ok) return bound;
  const side = upper === null ? { low: bound.value.quantity } : { high: bound.value.quantity };
  return range(side, bound.value, bound.value.decimals, text);
}

/**
 * Reads a bound, two bounds, a nominal with plus/minus, or one value (then both bounds are it). In a range the unit may
 * stand once. A range that runs backwards is refused.
 * @example readRange('9–11 N·m', 'torque') // low 9, high 11
 */
export function readRange<D extends Dimension>(text: string, dimension: D): Read<WrittenRange<D>> {
  const trimmed = text.trim();
  const long = tooLong(trimmed);
  if (long !== undefined) return long;
  const around = plusMinus.exec(trimmed);
  if (around !== null) return readAround(around[1] ?? '', around[2] ?? '', around[2] ?? '', dimension, trimmed);
  const lopsided = unequal.exec(trimmed);
  if (lopsided !== null) {
    const nominal = (lopsided[1] ?? '') + ' ' + (lopsided[4] ?? '');
    return readAround(nominal.trim(), lopsided[2] ?? '', lopsided[3] ?? '', dimension, trimmed);
  }
  const whole = readQuantity(trimmed, dimension);
  if (whole.ok)
    return range({ low: whole.value.quantity, high: whole.value.quantity }, whole.value, whole.value.decimals, trimmed);
  const two = oneMixed.test(trimmed) ? null : between.exec(trimmed);
  const both = two === null ? undefined : readBetween(two[1] ?? '', two[2] ?? '', dimension, trimmed);
  if (both?.ok === true) return both;
  return readBound(trimmed, dimension) ?? both ?? whole;
}
