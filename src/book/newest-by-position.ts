// The newest of readings at each position; one without a position gives way when the thing is later read position by position.
import type { SeriesPoint } from './book.ts';

/** Points oldest first; one point a position. Two values of one record, with and without a position, both stand. */
export function newestByPosition(points: readonly SeriesPoint[]): readonly SeriesPoint[] {
  const newest = new Map<string, SeriesPoint>();
  for (const point of points) {
    const whole = newest.get('');
    if (point.position !== '' && whole !== undefined && whole.job !== point.job) newest.delete('');
    newest.set(point.position, point);
  }
  return [...newest.values()];
}
