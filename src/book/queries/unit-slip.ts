// One unit taken for another: a value off by the ratio of two units.
import { counting, shown, si } from './counting.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import type { Problem } from '../../problem/problem.ts';
import type { Series, SeriesPoint } from '../book.ts';
import { measureOf, type Measure } from '../verdict.ts';
import { keptWith } from '../../records/kept-with.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** What one unit was taken for another by: inches, thousandths of them, kilograms, feet, pounds, and the slipped decimal. */
const slips: Partial<Readonly<Record<Dimension, readonly number[]>>> = {
  length: [25.4, 1000 / 25.4, 10, 1000],
  torque: [9.80665, 12, 1.355818 * 9.80665, 10],
  'gauge pressure': [14.5038, 10, 100],
  'distance ridden': [1.609344, 10],
  force: [9.80665, 10],
  volume: [10, 1000],
  resistance: [1000],
};

/** Within 4 % of one of the factors, either way. */
export function slipOf(a: number, b: number, dimension: Dimension): number | undefined {
  const ratio = Math.abs(a) > Math.abs(b) ? a / b : b / a;
  return slips[dimension]?.find((factor) => Math.abs(ratio / factor - 1) < 0.04);
}

function expected(series: Series): number | undefined {
  const range = series.limit?.standard ?? series.setting?.range;
  if (range !== undefined)
    return range.low !== undefined && range.high !== undefined
      ? (range.low + range.high) / 2
      : (range.low ?? range.high);
  return series.setting?.value.kind === 'read' ? series.setting.value.written.quantity : undefined;
}

/** Between two readings of one thing smaller ratios are wear or work, not a slip. */
const gross = 5;

/**
 * How many times a value is off the middle of its standard, when one unit taken for another brings it between new and worn out:
 * 14 mm for a ring gap of 14 thou. Only what is too great: far too small may be wear.
 */
export function grossSlip({ standard, limit }: Measure, value: number, dimension: Dimension): number | undefined {
  const edges = [standard?.low, standard?.high, limit?.low, limit?.high].filter((edge) => edge !== undefined);
  const given = [standard?.low, standard?.high].filter((edge) => edge !== undefined);
  if (given.length === 0 || Math.min(...edges) <= 0) return undefined;
  const [low, high] = [Math.min(...edges), Math.max(...edges)];
  const meant = (slips[dimension] ?? []).some(
    (factor) => factor >= gross && value / factor >= low && value / factor <= high,
  );
  return meant ? value / (given.reduce((sum, edge) => sum + edge, 0) / given.length) : undefined;
}

/** Nearly all readings are near the one before them, and then no factor need be tried. */
function isNear(a: number, b: number): boolean {
  const [small, large] = Math.abs(a) < Math.abs(b) ? [Math.abs(a), Math.abs(b)] : [Math.abs(b), Math.abs(a)];
  return large < small * gross * 0.95;
}

/** A reading that is a gross slip from the one before it, at the same position, where the book has no figure to tell by. */
function againstNeighbours(series: Series): readonly Problem[] {
  const last = new Map<string, SeriesPoint>();
  return counting(series).flatMap((point) => {
    const before = last.get(point.position);
    last.set(point.position, point);
    if (before === undefined || point.value.kind !== 'read' || before.job === point.job) return [];
    if (isNear(si(point), si(before))) return [];
    const factor = slipOf(si(point), si(before), point.value.written.unit.dimension);
    if (factor === undefined || factor < gross) return [];
    const times = String(Math.round(factor * 10) / 10);
    const message = `${series.name} ${shown(point)} is about ${times} times off ${shown(before)} on ${before.day}: one unit taken for another?`;
    return [query('unit-slip', point.at, message, 'look at the unit on the gauge, both times')];
  });
}

/** A value that is off by the ratio of two units: against its standard, else against the reading before it. */
export const unitSlip: Look = ({ series }) => series.series.flatMap((one) => slipsIn(one));

const slipsIn = keptWith((one: Series): readonly Problem[] => {
  const standard = expected(one);
  if (standard === undefined) return againstNeighbours(one);
  if (standard === 0) return [];
  const odd = counting(one).filter((point) => point.verdict !== 'within standard');
  return odd.flatMap((point) => {
    if (point.value.kind !== 'read') return [];
    const { dimension } = point.value.written.unit;
    const measure = measureOf(one.limit, one.setting) ?? {};
    const factor = slipOf(si(point), standard, dimension) ?? grossSlip(measure, si(point), dimension);
    if (factor === undefined) return [];
    return [
      query(
        'unit-slip',
        point.at,
        `${one.name} ${shown(point)} is about ${String(Math.round(factor * 10) / 10)} times off its standard: one unit taken for another?`,
        'look at the unit on the gauge and in the book',
      ),
    ];
  });
});
