// The points of a series that count: read, and not struck out.
import type { Series, SeriesPoint } from '../book.ts';

/** Several looks ask for the same points; they are kept as long as their series is. */
const known = new WeakMap<Series, readonly SeriesPoint[]>();

export function counting(series: Series): readonly SeriesPoint[] {
  const before = known.get(series);
  if (before !== undefined) return before;
  const points = series.points.filter((point) => point.corrected === undefined && point.value.kind === 'read');
  known.set(series, points);
  return points;
}

export function si(point: SeriesPoint): number {
  return point.value.kind === 'read' ? point.value.written.quantity : Number.NaN;
}

export function shown(point: SeriesPoint): string {
  const text = point.value.kind === 'read' ? point.value.written.text : '?';
  return point.position === '' ? text : `${point.position} ${text}`;
}
