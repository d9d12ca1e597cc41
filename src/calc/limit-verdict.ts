// Deciding against a limit with an instrument that is not perfect: within, worn but usable, past, or too close to call.
import type { Figure } from '../figure/figure.ts';
import { inUnit } from '../quantity/quantity.ts';
import type { Dimension, Quantity, Unit, WrittenRange } from '../quantity/quantity.ts';

export type Verdict =
  'within standard' | 'worn, usable' | 'past the limit' | 'too close to call' | 'better than new' | 'no limit known';

export interface Judged {
  readonly verdict: Verdict;
  /** Distance left to the nearer limit, negative past it; in the unit of the limit. Undefined without a limit. */
  readonly left?: number;
  /** Expanded uncertainty used, in the unit of the limit; 0 when none is known. */
  readonly guard: number;
  /** One sentence that says why. */
  readonly because: string;
}

interface Bounds {
  readonly low?: number;
  readonly high?: number;
}

/** Bounds in plain numbers of a unit. */
function boundsIn<D extends Dimension>(range: WrittenRange<D> | undefined, unit: Unit<NoInfer<D>>): Bounds {
  if (range === undefined) return {};
  const ends = [range.low, range.high].map((end) => (end === undefined ? undefined : inUnit<Dimension>(end, unit)));
  const [a, b] = unit.inverse === true ? [ends[1], ends[0]] : ends;
  return { ...(a === undefined ? {} : { low: a }), ...(b === undefined ? {} : { high: b }) };
}

/** How far inside the bounds a value lies; negative outside. Infinity without bounds. */
function inside(value: number, bounds: Bounds): number {
  return Math.min(value - (bounds.low ?? -Infinity), (bounds.high ?? Infinity) - value);
}

/**
 * A value far outside the standard on the side away from the limit: carbon, a wrong reading, a wrong unit. Far is what the
 * instrument cannot explain, twice its uncertainty; where none is known, twice the width of the standard.
 */
function tooGood(value: number, standard: Bounds, limit: Bounds, guard: number): boolean {
  const { low, high } = standard;
  const far = 2 * (guard > 0 ? guard : (high ?? low ?? 0) - (low ?? high ?? 0));
  if (limit.high !== undefined && limit.low === undefined) return low !== undefined && value < low - far;
  if (limit.low !== undefined && limit.high === undefined) return high !== undefined && value > high + far;
  return false;
}

/**
 * Judges a reading against a standard and a limit. With an uncertainty U a value within U of a limit is too close to call
 * (ISO 14253-1; JCGM 106 guard band w = U): conformity and non-conformity must both be proved. Inside the limit but outside the
 * standard is worn, usable: the standard is not guarded, since both its sides are usable and nothing is decided there. A value of
 * exactly the limit, with no uncertainty known, is not past it. Without a limit nothing is said of a value outside the standard:
 * a maker's size when new is no service limit.
 * `value` and `uncertainty` in SI of the dimension.
 */
export function judge<D extends Dimension>(
  value: Quantity<D>,
  uncertainty: Quantity<D> | undefined,
  standard: WrittenRange<D> | undefined,
  limit: WrittenRange<D> | undefined,
  unit: Unit<NoInfer<D>>,
): Judged {
  const number = inUnit<Dimension>(value, unit);
  const guard = uncertainty === undefined || unit.inverse === true ? 0 : uncertainty / unit.factor;
  const [standardBounds, limitBounds] = [boundsIn<D>(standard, unit), boundsIn<D>(limit, unit)];
  // Rounding of the last decimal by the change of unit must not decide.
  const slack = 1e-9 * Math.max(1, Math.abs(number));
  const toLimit = inside(number, limitBounds);
  const toStandard = inside(number, standardBounds);
  const left = Number.isFinite(toLimit) ? { left: toLimit } : {};
  const say = (verdict: Verdict, because: string): Judged => ({ verdict, guard, because, ...left });
  if (tooGood(number, standardBounds, limitBounds, guard))
    return say(
      'better than new',
      'It lies far outside the standard on the good side: look for a slip, carbon or another part.',
    );
  if (guard > 0 && Number.isFinite(toLimit) && Math.abs(toLimit) < guard - slack)
    return say('too close to call', 'The reading lies within the uncertainty of the instrument from the limit.');
  if (toLimit < -slack) return say('past the limit', 'The reading lies past the limit by more than the uncertainty.');
  if (!Number.isFinite(toLimit) && (standard === undefined || toStandard < -slack))
    return say('no limit known', 'The book gives no limit, and the reading does not lie inside a standard.');
  if (standard !== undefined && toStandard < -slack)
    return say('worn, usable', 'The reading lies outside the standard and inside the limit.');
  if (standard === undefined)
    return say('worn, usable', 'The reading lies inside the limit; the book gives no standard.');
  return say('within standard', 'The reading lies inside the standard.');
}

/**
 * Judges a setting, which is set to its mark and not worn towards it: inside its range is within, outside by the uncertainty or
 * more is past, between them it is too close to call.
 */
export function judgeSetting<D extends Dimension>(
  value: Quantity<D>,
  uncertainty: Quantity<D> | undefined,
  range: WrittenRange<D>,
  unit: Unit<NoInfer<D>>,
): Judged {
  const judged = judge<D>(value, uncertainty, range, range, unit);
  if (judged.verdict !== 'too close to call' || (judged.left ?? -1) < 0) return judged;
  return { ...judged, verdict: 'within standard', because: 'The reading lies inside the range of the setting.' };
}

/** Mean of repeat readings, the range between them, and the expanded uncertainty of the mean (k = 2) from their spread. */
export function repeats(values: readonly number[]): {
  readonly mean: number;
  readonly range: number;
  readonly expanded: number;
} {
  const count = values.length;
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  const range = Math.max(...values) - Math.min(...values);
  if (count < 2) return { mean, range, expanded: 0 };
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1);
  return { mean, range, expanded: 2 * Math.sqrt(variance / count) };
}

/** Expanded uncertainty (k = 2), SI: resolution as a rectangle, accuracy as the maker's limit, spread of repeats; JCGM 100. */
export function instrumentUncertainty(resolution: number, accuracy: number, spreadExpanded = 0): number {
  const standard = Math.sqrt(
    (resolution / Math.sqrt(12)) ** 2 + (accuracy / Math.sqrt(3)) ** 2 + (spreadExpanded / 2) ** 2,
  );
  return 2 * standard;
}

/** Judges a figure that carries its own uncertainty. */
export function judgeFigure<D extends Dimension>(
  figure: Figure<D>,
  standard: WrittenRange<D> | undefined,
  limit: WrittenRange<D> | undefined,
): Judged {
  const unit: Unit<D> = limit?.unit ?? standard?.unit ?? figure.unit;
  return judge<D>(figure.quantity, figure.uncertainty, standard, limit, unit);
}
