// The points of a series that count: read, and not struck out.
import { keptWith } from '../../records/kept-with.ts';
import type { Series, SeriesPoint } from '../book.ts';

/** Several looks ask for the same points; they are kept as long as their series is. */
export const counting = keptWith(({ points }: Series): readonly SeriesPoint[] =>
  points.filter((point) => point.corrected === undefined && point.value.kind === 'read'),
);

export function si(point: SeriesPoint): number {
  return point.value.kind === 'read' ? point.value.written.quantity : Number.NaN;
}

export function shown(point: SeriesPoint): string {
  const text = point.value.kind === 'read' ? point.value.written.text : '?';
  return point.position === '' ? text : `${point.position} ${text}`;
}
