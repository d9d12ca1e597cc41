// The reading that a record left of an item at a position, with corrections applied: what a proof is judged by.
import type { SeriesPoint } from './book.ts';
import type { Judge } from './proofs.ts';
import type { SeriesWork } from './series.ts';

/** Indexes the counting points once; the later of found and left wins. */
export function judgeOf(series: SeriesWork): Judge {
  const last = new Map<string, SeriesPoint>();
  for (const [item, one] of series.byItem) {
    for (const point of one.points) {
      if (point.corrected === undefined) last.set(`${point.job.id}|${item}|${point.position}`, point);
    }
  }
  return (item, job, position) => last.get(`${job.id}|${item}|${position}`);
}
