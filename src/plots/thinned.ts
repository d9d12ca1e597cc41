// A plot of more points than can be told apart: fewer of them, with everything that sticks out kept.
import type { PlotBlock } from '../sheet/sheet.ts';

type Series = PlotBlock['series'][number];
type Point = Series['points'][number];

/** The plot with at most about `most` points in a series: of each run of points the lowest and the highest, and both ends. The table has them all. */
export function thinned(block: PlotBlock, most: number): PlotBlock {
  if (block.series.every(({ points }) => points.length <= most)) return block;
  return { ...block, series: block.series.map((series) => thinnedSeries(series, most)) };
}

function thinnedSeries(series: Series, most: number): Series {
  const { points } = series;
  if (points.length <= most) return series;
  const run = Math.ceil((2 * points.length) / most);
  const kept = new Set<Point>(points.slice(0, 1));
  for (let from = 0; from < points.length; from += run)
    for (const one of ends(points.slice(from, from + run))) kept.add(one);
  for (const last of points.slice(-1)) kept.add(last);
  return { ...series, points: points.filter((point) => kept.has(point)) };
}

/** The lowest and the highest of a run. */
function ends(run: readonly Point[]): readonly Point[] {
  const lowest = run.reduce((one, other) => (other.y < one.y ? other : one), run[0] ?? { x: 0, y: 0 });
  const highest = run.reduce((one, other) => (other.y > one.y ? other : one), lowest);
  return [lowest, highest];
}
