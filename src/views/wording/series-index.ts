// Finds what the book says about one reading without a walk through all series: made once for a book, then asked many times.
import type { Book, Series, SeriesPoint } from '../../book/book.ts';
import type { Job } from '../../records/model.ts';

export interface SeriesIndex {
  readonly of: (item: string) => Series | undefined;
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
  const newest = new Map<string, ReadonlyMap<string, SeriesPoint>>();
  const last = (item: string): ReadonlyMap<string, SeriesPoint> => {
    const before = newest.get(item);
    if (before !== undefined) return before;
    const found = newestOf(series.get(item)?.points ?? []);
    newest.set(item, found);
    return found;
  };
  return {
    of: (item) => series.get(item),
    ofRecord: (job, item) => ofRecord(series.get(item), job),
    last: (item, position) => last(item).get(position),
  };
}

/** Points stand in the order of their records, those of one record together: they are found by halving. */
function ofRecord(series: Series | undefined, job: Job): readonly SeriesPoint[] {
  const points = series?.points ?? [];
  let low = 0;
  let high = points.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const there = points[middle];
    if (there !== undefined && isBefore(there.job, job)) low = middle + 1;
    else high = middle;
  }
  let end = low;
  while (points[end]?.job === job) end += 1;
  return points.slice(low, end);
}

/** The order of the book: by first day, then by file. */
function isBefore(one: Job, other: Job): boolean {
  return one.date.from === other.date.from ? one.file < other.file : one.date.from < other.date.from;
}

function newestOf(points: readonly SeriesPoint[]): ReadonlyMap<string, SeriesPoint> {
  const newest = new Map<string, SeriesPoint>();
  for (const point of points) {
    if (point.corrected !== undefined || point.value.kind !== 'read') continue;
    const known = newest.get(point.position);
    if (known === undefined || known.day <= point.day) newest.set(point.position, point);
  }
  return newest;
}
