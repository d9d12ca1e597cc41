// Which readings still hold: the newest of each item, and what has touched it since.
import type { Job } from '../records/model.ts';
import type { Book, Series, SeriesPoint } from './book.ts';
import { makeReach, touchByKind, touchBySetting, touchByWork, type Touch } from './disturbance.ts';
import { keptOfBook } from './kept-of-book.ts';
import { layGround, type Ground } from './ground.ts';

export interface ReadingSince {
  readonly series: Series;
  /** The newest counting reading of the item, every position that was read with it. */
  readonly points: readonly SeriesPoint[];
  /** What undid it: it is to be measured again. */
  readonly undone?: { readonly job: Job; readonly what: string };
}

interface Touched {
  readonly moment: number;
  readonly job: Job;
  readonly what: string;
  /** By a procedure as a whole: what its own record found while it was followed still holds. */
  readonly whole: boolean;
}

/** Moments inside one record: found, then its work, then what was set, then what was left. */
const inside = { found: 0, work: 1, set: 2, left: 3 } as const;

/** Every item that was touched, with the last record that did it; of records from `first` on in their order. */
function lastTouches(book: Book, ground: Ground, first: number): ReadonlyMap<string, Touched> {
  const reach = makeReach(ground);
  const items = new Set(book.series.map(({ item }) => ground.key(item)));
  const touched = new Map<string, Touched>();
  const at =
    (job: Job, moment: number): Touch =>
    (keys, thing, how) => {
      // Only a procedure is told without what was done to a thing.
      const whole = how === '';
      for (const key of keys) {
        if (!items.has(key)) continue;
        if (whole && touched.get(key)?.job === job) continue;
        touched.set(key, { moment, job, what: thing + how, whole });
      }
    };
  for (const job of ground.jobs) {
    const order = ground.order.get(job) ?? 0;
    if (order < first) continue;
    touchByKind(job, ground, at(job, order * 4 + inside.work));
    touchByWork(job, ground, reach, at(job, order * 4 + inside.work));
    const set = at(job, order * 4 + inside.set);
    for (const reading of job.readings) touchBySetting(reading, ground, reach, set);
  }
  return touched;
}

/** The newest reading of every item, in the order of the book; of an item renewed since, none. Linear in the records. */
export const readingsSince = keptOfBook(since);

function since(book: Book): readonly ReadingSince[] {
  const ground = layGround(book.records, book.content, book.today);
  const { key } = ground;
  const orderOf = ({ job }: SeriesPoint): number => ground.order.get(job) ?? 0;
  const read = book.series.map((series) => ({ series, points: newestOf(series) }));
  // What was touched before every newest reading has undone none of them.
  const first = read.reduce(
    (least, { points: [one] }) => (one === undefined ? least : Math.min(least, orderOf(one))),
    Infinity,
  );
  const touched = lastTouches(book, ground, first);
  return read.flatMap(({ series, points }): readonly ReadingSince[] => {
    const newest = points.at(-1);
    if (newest === undefined) return [];
    const moment = orderOf(newest) * 4 + inside[newest.side];
    const renewed = series.basis.at(-1);
    const touch = touched.get(key(series.item));
    const own = touch?.whole === true && touch.job === newest.job;
    if (touch !== undefined && touch.moment > moment && !own)
      return [{ series, points, undone: { job: touch.job, what: touch.what } }];
    if (renewed === undefined || renewed.from < newest.day || newest.side === 'left') return [{ series, points }];
    return [{ series, points, undone: { job: newest.job, what: renewed.what } }];
  });
}

/** From the end on: what one record read stands together, and long series are not walked through. */
function newestOf({ points }: Series): readonly SeriesPoint[] {
  const newest: SeriesPoint[] = [];
  for (let at = points.length - 1; at >= 0; at -= 1) {
    const point = points[at];
    if (point === undefined || point.corrected !== undefined || point.value.kind === 'unknown') continue;
    const [last] = newest;
    if (last !== undefined && last.job !== point.job) break;
    if (last === undefined || last.side === point.side) newest.push(point);
  }
  return newest.toReversed();
}
