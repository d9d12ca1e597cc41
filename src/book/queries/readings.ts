// Readings that an experienced eye would not believe, or would not compare.
import { hasWords } from '../names.ts';
import { printRange } from '../../figure/print.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import type { Job, Reading } from '../../records/model.ts';
import type { Series, SeriesPoint } from '../book.ts';
import type { Ground } from '../ground.ts';
import { expandedUncertainty } from '../uncertainty.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** What one unit was taken for another by: inches, kilograms, feet, pounds, and the slipped decimal. */
const slips: Partial<Readonly<Record<Dimension, readonly number[]>>> = {
  length: [25.4, 10, 1000],
  torque: [9.80665, 12, 1.355818 * 9.80665, 10],
  'gauge pressure': [14.5038, 10, 100],
  'distance ridden': [1.609344, 10],
  force: [9.80665, 10],
  volume: [10, 1000],
  resistance: [1000],
};

/** The counting points of a series; several looks ask for them. */
const known = new WeakMap<Series, readonly SeriesPoint[]>();

function counting(series: Series): readonly SeriesPoint[] {
  const before = known.get(series);
  if (before !== undefined) return before;
  const points = series.points.filter((point) => point.corrected === undefined && point.value.kind === 'read');
  known.set(series, points);
  return points;
}

function si(point: SeriesPoint): number {
  return point.value.kind === 'read' ? point.value.written.quantity : Number.NaN;
}

function shown(point: SeriesPoint): string {
  const text = point.value.kind === 'read' ? point.value.written.text : '?';
  return point.position === '' ? text : `${point.position} ${text}`;
}

/** Within 4 % of one of the factors, either way. */
function slipOf(a: number, b: number, dimension: Dimension): number | undefined {
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

/** A value that is off by the ratio of two units, against its standard. */
export const unitSlip: Look = ({ series }) =>
  series.series.flatMap((one) => {
    const standard = expected(one);
    if (standard === undefined || standard === 0) return [];
    const odd = counting(one).filter((point) => point.verdict !== 'within standard');
    return odd.flatMap((point) => {
      if (point.value.kind !== 'read') return [];
      const factor = slipOf(si(point), standard, point.value.written.unit.dimension);
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

/** A part was left past its limit, and nothing in the record says why. */
export const leftPastLimit: Look = ({ series }) =>
  series.series.flatMap((one) => {
    const newest = new Map(counting(one).map((point) => [point.position, point]));
    return [...newest.values()].flatMap((point) => {
      const renewed = one.basis.some((basis) => basis.from >= point.day);
      const said =
        point.job.findings.length > 0 ||
        point.job.readings.some((reading) => reading.at === point.at && reading.note !== undefined);
      if (point.verdict !== 'past the limit' || renewed || said) return [];
      const bound = one.limit?.limit ?? one.setting?.range;
      return [
        query(
          'left-past-its-limit',
          point.at,
          `${one.name} ${shown(point)} is past its limit${bound === undefined ? '' : ` (${printRange(bound)})`}, and the record does not say what became of it`,
          'write a finding, or the reading after it was put right',
        ),
      ];
    });
  });

/** 1 wears upwards (a maximum is its limit), -1 downwards; 0 when that is not known. Only sizes wear: a pressure comes back with better work. */
function direction(series: Series): number {
  const limit = series.limit?.limit;
  if (limit?.unit.dimension !== 'length') return 0;
  if (limit.low !== undefined && limit.high !== undefined) return 0;
  return limit.high === undefined ? -1 : 1;
}

function renewedBetween(series: Series, before: SeriesPoint, after: SeriesPoint): boolean {
  return series.basis.some((basis) => basis.from >= before.day && basis.from <= after.day);
}

/** Wear that runs backwards with no part renewed between. */
export const wearBackwards: Look = ({ series, ground }) =>
  series.series.flatMap((one) => {
    const way = direction(one);
    if (way === 0) return [];
    const last = new Map<string, SeriesPoint>();
    return counting(one).flatMap((point) => {
      const like = `${point.position}|${point.condition.length < 2 ? (point.condition[0] ?? '') : point.condition.toSorted().join(',')}`;
      const before = last.get(like);
      last.set(like, point);
      if (before === undefined || point.value.kind !== 'read' || renewedBetween(one, before, point)) return [];
      const back = way * (si(before) - si(point));
      if (back <= 0) return [];
      const tool = point.instrument === undefined ? undefined : ground.instruments.get(ground.key(point.instrument));
      if (back <= 2 * expandedUncertainty(point.value.written, tool)) return [];
      return [
        query(
          'wear-backwards',
          point.at,
          `${one.name}: ${shown(point)} after ${shown(before)} on ${before.day}, and nothing was renewed between`,
          'measure again, or write the part that was fitted',
        ),
      ];
    });
  });

/** Better than new: a worn part cannot be, so the instrument or the book is wrong. */
export const betterThanNew: Look = ({ series, ground }) =>
  series.series.flatMap((one) => {
    const way = direction(one);
    const standard = one.limit?.standard;
    const edge = way === 1 ? standard?.low : standard?.high;
    if (way === 0 || edge === undefined || one.basis.length > 0) return [];
    const beyond = counting(one).filter((point) => way * (edge - si(point)) > 0);
    return beyond.flatMap((point) => {
      if (point.value.kind !== 'read') return [];
      const better = way * (edge - si(point));
      const tool = point.instrument === undefined ? undefined : ground.instruments.get(ground.key(point.instrument));
      if (
        better <= 2 * expandedUncertainty(point.value.written, tool) ||
        slipOf(si(point), edge, point.value.written.unit.dimension) !== undefined
      )
        return [];
      return [
        query(
          'better-than-new',
          point.at,
          `${one.name} ${shown(point)} is better than new (${standard === undefined ? '' : printRange(standard)})`,
          'look at the instrument, and at which part this is',
        ),
      ];
    });
  });

const opposite: readonly (readonly [string, string])[] = [
  ['cold', 'hot'],
  ['cold', 'warm'],
  ['dry', 'oiled'],
  ['assembled', 'free'],
];

function against(wanted: readonly string[], had: readonly string[]): string | undefined {
  const clash = opposite.find(
    ([a, b]) =>
      (wanted.some((one) => hasWords(one, a)) && had.some((one) => hasWords(one, b))) ||
      (wanted.some((one) => hasWords(one, b)) && had.some((one) => hasWords(one, a))),
  );
  return clash === undefined ? undefined : had.join(', ');
}

/** The last record that read each item, with its readings of it: one of them in the right condition is enough. */
function lastReadings(ground: Ground): ReadonlyMap<string, readonly Reading[]> {
  const last = new Map<string, { readonly job: Job; readonly readings: Reading[] }>();
  for (const job of ground.jobs) {
    for (const reading of job.readings) {
      if (![...reading.found, ...reading.left].some((one) => one.value.kind === 'read')) continue;
      const key = ground.key(reading.item);
      const known = last.get(key);
      if (known?.job === job) known.readings.push(reading);
      else last.set(key, { job, readings: [reading] });
    }
  }
  return new Map([...last].map(([key, { readings }]) => [key, readings]));
}

/** Read last in another condition than the book asks for, or in one that nobody wrote down. */
export const conditionOfReading: Look = ({ ground }) =>
  [...lastReadings(ground)].flatMap(([key, readings]) => {
    const wanted = ground.limits.get(key)?.condition ?? ground.settings.get(key)?.condition ?? [];
    const odd = readings.find((one) => one.condition.length === 0 || against(wanted, one.condition) !== undefined);
    const right = readings.some((one) => one.condition.length > 0 && against(wanted, one.condition) === undefined);
    if (wanted.length === 0 || odd === undefined || right) return [];
    const asks = wanted.join(', ');
    if (odd.condition.length === 0) {
      const message = `${odd.item}: the book asks for ${asks}, and the reading does not say how it was taken`;
      return [query('reading-without-condition', odd.at, message, 'write `condition:`')];
    }
    const message = `${odd.item}: read ${odd.condition.join(', ')}, and the book asks for ${asks}`;
    return [query('reading-in-other-condition', odd.at, message, 'read it again as the book says')];
  });
