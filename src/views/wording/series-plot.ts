// The plot of a series: like with like, a line broken where the part was renewed, the limit in force across it.
import { sentence } from './blocks.ts';
import type { Series, SeriesPoint } from '../../book/book.ts';
import { dayNumber } from '../../quantity/day-arithmetic.ts';
import { inUnit } from '../../quantity/quantity.ts';
import type { Unit } from '../../quantity/quantity.ts';
import type { PlotBlock } from '../../sheet/sheet.ts';
import { valueText } from './value.ts';

const marks = ['dot', 'square', 'triangle', 'cross'] as const;
const strokes = ['solid', 'dashed', 'dotted'] as const;

type PlotSeries = PlotBlock['series'][number];

/** A line through fewer days than this shows nothing that the figures do not. */
const fewestDays = 3;

/** A plot where there are at least three days to compare; undefined otherwise. */
export function seriesPlot(say: (words: string) => string, series: Series): PlotBlock | undefined {
  const unit = unitOf(series);
  if (unit === undefined) return undefined;
  const readable = series.points.filter((point) => isPlain(point, unit));
  if (new Set(readable.map((point) => point.day)).size < fewestDays) return undefined;
  return {
    type: 'plot',
    title: sentence(series.name),
    description: `${series.name}: ${say('readings by date, a line for each position and condition; the table beside it has every value')}.`,
    x: { label: say('date'), kind: 'day' },
    y: { label: unit.symbol },
    series: likeWithLike(say, series, readable).map(([name, points], index) => plotSeries(name, points, unit, index)),
    limits: limitsOf(say, series, unit),
  };
}

function unitOf(series: Series): Unit | undefined {
  if (series.limit !== undefined) return series.limit.unit;
  for (const { value } of series.points) if (value.kind === 'read') return value.written.unit;
  return undefined;
}

function isPlain(point: SeriesPoint, unit: Unit): boolean {
  if (point.corrected !== undefined || point.value.kind !== 'read') return false;
  return point.value.written.unit.dimension === unit.dimension;
}

/** So many positions are told apart in one plot; of more, the largest and the smallest of each day are drawn. */
const mostPositions = 4;

type Line = readonly [string, readonly SeriesPoint[]];

/** Same position, same condition, same basis: one line. */
function likeWithLike(say: (words: string) => string, series: Series, points: readonly SeriesPoint[]): readonly Line[] {
  const positions = new Set(points.map((point) => point.position)).size;
  if (positions <= mostPositions) return grouped(say, series, points, (point) => point.position);
  return grouped(say, series, points, () => '').flatMap(([name, those]): readonly Line[] => [
    [`${say('largest of all positions')}; ${name}`, extremes(those, (one, other) => one > other)],
    [`${say('smallest of all positions')}; ${name}`, extremes(those, (one, other) => one < other)],
  ]);
}

function grouped(
  say: (words: string) => string,
  series: Series,
  points: readonly SeriesPoint[],
  positionOf: (point: SeriesPoint) => string,
): readonly Line[] {
  const groups = new Map<string, SeriesPoint[]>();
  for (const point of points) {
    const basis = series.basis.findLast((one) => one.from <= point.day)?.what;
    const words = [positionOf(point), point.condition.join(', '), basis ?? ''].filter((word) => word !== '');
    const name = words.join('; ') || say('readings');
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [point]);
    else group.push(point);
  }
  return [...groups];
}

/** For each day and side the reading that goes furthest. */
function extremes(
  points: readonly SeriesPoint[],
  further: (one: number, other: number) => boolean,
): readonly SeriesPoint[] {
  const furthest = new Map<string, SeriesPoint>();
  for (const point of points) {
    const key = `${point.day} ${point.side}`;
    const known = furthest.get(key);
    const beats = known === undefined || further(sizeOf(point), sizeOf(known));
    if (beats) furthest.set(key, point);
  }
  return [...furthest.values()];
}

function sizeOf(point: SeriesPoint): number {
  return point.value.kind === 'read' ? point.value.written.quantity : Number.NaN;
}

function plotSeries(name: string, points: readonly SeriesPoint[], unit: Unit, index: number): PlotSeries {
  return {
    name,
    mark: marks[index % marks.length] ?? 'dot',
    line: strokes[Math.floor(index / marks.length) % strokes.length] ?? 'solid',
    points: points.flatMap((point) => {
      if (point.value.kind !== 'read') return [];
      const label = valueText(point.value) ?? '';
      return [{ x: dayNumber(point.day), y: inUnit(point.value.written.quantity, unit), label }];
    }),
  };
}

function limitsOf(say: (words: string) => string, series: Series, unit: Unit): PlotBlock['limits'] {
  const range = series.limit?.limit ?? series.setting?.range;
  const high = range?.high;
  const low = range?.low;
  return [
    ...(high === undefined ? [] : [{ name: say('limit, not above'), y: inUnit(high, unit), line: 'dashed' as const }]),
    ...(low === undefined ? [] : [{ name: say('limit, not below'), y: inUnit(low, unit), line: 'dashed' as const }]),
  ];
}
