// Finds what the book says about one reading without a walk through all series: made once for a book, then asked many times.
import type { Book, Series, SeriesPoint } from '../../book/book.ts';
import type { Job } from '../../records/model.ts';

export interface SeriesIndex {
  readonly of: (item: string) => Series | undefined;
  readonly point: (job: Job, item: string, position: string, side: 'found' | 'left') => SeriesPoint | undefined;
  /** All readings of an item in one record. */
  readonly ofRecord: (job: Job, item: string) => readonly SeriesPoint[];
  /** Newest reading of an item at a position that was read in full and not corrected since. */
  readonly last: (item: string, position: string) => SeriesPoint | undefined;
}

const made = new WeakMap<Book, SeriesIndex>();

/** The index of a book; the same one every time. */
export function seriesIndex(book: Book): SeriesIndex {
  const before = made.get(book);
  if (before !== undefined) return before;
  const index = makeIndex(book);
  made.set(book, index);
  return index;
}

function makeIndex(book: Book): SeriesIndex {
  const series = new Map(book.series.map((one) => [one.item, one]));
  const byJob = new Map<Job, SeriesPoint[]>();
  const items = new Map<SeriesPoint, string>();
  const newest = new Map<string, SeriesPoint>();
  for (const one of book.series) {
    for (const point of one.points) {
      items.set(point, one.item);
      const points = byJob.get(point.job);
      if (points === undefined) byJob.set(point.job, [point]);
      else points.push(point);
      keepNewest(newest, `${one.item}/${point.position}`, point);
    }
  }
  return {
    of: (item) => series.get(item),
    point: (job, item, position, side) =>
      byJob.get(job)?.find((point) => items.get(point) === item && point.position === position && point.side === side),
    ofRecord: (job, item) => byJob.get(job)?.filter((point) => items.get(point) === item) ?? [],
    last: (item, position) => newest.get(`${item}/${position}`),
  };
}

function keepNewest(newest: Map<string, SeriesPoint>, key: string, point: SeriesPoint): void {
  if (point.corrected !== undefined || point.value.kind !== 'read') return;
  const known = newest.get(key);
  if (known === undefined || known.day <= point.day) newest.set(key, point);
}
