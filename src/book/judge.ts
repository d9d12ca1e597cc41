// The reading that a record left of an item at a position, with corrections applied: what a proof is judged by.
import type { Job } from '../records/model.ts';
import type { Series, SeriesPoint } from './book.ts';
import type { Judge } from './proofs.ts';
import type { SeriesWork } from './series.ts';

type ByJob = ReadonlyMap<Job, ReadonlyMap<string, SeriesPoint>>;

/** Counting points of a series by record and position; the later of found and left wins. */
function index(series: Series | undefined): ByJob {
  const found = new Map<Job, Map<string, SeriesPoint>>();
  for (const point of series?.points ?? []) {
    if (point.corrected !== undefined) continue;
    const own = found.get(point.job) ?? new Map<string, SeriesPoint>();
    found.set(point.job, own.set(point.position, point));
  }
  return found;
}

/** Indexes a series the first time it is asked for: few items are proofs. */
export function judgeOf(series: SeriesWork): Judge {
  const known = new Map<string, ByJob>();
  return (item, job, position) => {
    const before = known.get(item);
    const byJob = before ?? index(series.byItem.get(item));
    if (before === undefined) known.set(item, byJob);
    return byJob.get(job)?.get(position);
  };
}
