// What was read last gives to a calculation: bores and pistons, compression, chain, battery, tyres, and any series that is asked for.
import type { Value } from '../../calc/calculation.ts';
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import type { Dimension, Written } from '../../quantity/quantity.ts';
import type { Series, SeriesPoint } from '../book.ts';
import { once } from './once.ts';
import type { Ask, Taken, Taker } from './taken.ts';

/** A point whose value was read in full, with that value. */
export interface ReadPoint {
  readonly point: SeriesPoint;
  readonly written: Written;
}

/** Readings that count, oldest first; `at` is the beginning of their position. */
export function readPoints(series: Series | undefined, at?: string): readonly ReadPoint[] {
  return series === undefined ? [] : pointsAt(series, at ?? '');
}

const pointsAt = once((series: Series, at: string): readonly ReadPoint[] =>
  series.points.flatMap((point) => {
    const counts = point.corrected === undefined && point.position.startsWith(at);
    return counts && point.value.kind === 'read' ? [{ point, written: point.value.written }] : [];
  }),
);

/** The newest reading of each position, in the order in which the positions were first read. */
export function newestByPosition(points: readonly ReadPoint[]): readonly ReadPoint[] {
  return newestOfEach(points, '');
}

const newestOfEach = once((points: readonly ReadPoint[]): readonly ReadPoint[] => {
  const newest = new Map<string, ReadPoint>();
  for (const one of points) newest.set(one.point.position, one);
  return [...newest.values()];
});

/** A reading as a figure that knows its record. */
export function figureOfPoint(one: ReadPoint): Figure {
  return figureOnce(one, '');
}

const figureOnce = once(({ point, written: value }: ReadPoint) => written<Dimension>(value, point.at, point.job.title));

function told(one: ReadPoint, value?: Value): Taken {
  const { point } = one;
  const position = value === undefined ? point.position : '';
  const where = [point.job.title, point.day, position].filter((part) => part !== '').join(', ');
  return { value: value ?? figureOfPoint(one), from: 'read last: ' + where };
}

/** The series of an item, by its id or by a word that its name begins or ends with. */
export function seriesOf({ book }: Ask, item: string): Series | undefined {
  return book.series.find((one) => one.item === item) ?? book.series.find((one) => one.item.includes(item));
}

function newestOf(ask: Ask, item: string, dimension: Dimension): ReadPoint | undefined {
  const points = readPoints(seriesOf(ask, item), ask.which.at);
  return points.findLast((one) => one.written.unit.dimension === dimension);
}

/** The newest reading of an item. */
export const newest =
  (item: string, dimension: Dimension): Taker =>
  (ask) => {
    const found = newestOf(ask, item, dimension);
    return found === undefined ? undefined : told(found);
  };

/** The cylinder that is asked for, else the first. */
function cylinder({ book, which }: Ask): string {
  return which.at ?? book.records.machine.features.cylinderNames[0] ?? '';
}

function boreReadings(ask: Ask): readonly ReadPoint[] {
  return newestByPosition(readPoints(seriesOf(ask, 'bore'), cylinder(ask)));
}

/** Bore readings of one cylinder whose position ends so, from top to bottom. */
export const boreAcross =
  (end: 'fore-aft' | 'across'): Taker =>
  (ask) => {
    const those = boreReadings(ask).filter(({ point }) => point.position.endsWith(end));
    const [first] = those;
    return first === undefined ? undefined : told(first, those.map(figureOfPoint));
  };

const extremeBore =
  (sign: 1 | -1): Taker =>
  (ask) => {
    const sorted = boreReadings(ask).toSorted((a, b) => sign * (b.written.quantity - a.written.quantity));
    const [first] = sorted;
    return first === undefined ? undefined : told(first);
  };

export const largestBore = extremeBore(1);
export const smallestBore = extremeBore(-1);

/** Newest skirt of the same cylinder. */
export const skirt: Taker = (ask) => {
  const found = readPoints(seriesOf(ask, 'piston-skirt'), cylinder(ask)).at(-1);
  return found === undefined ? undefined : told(found);
};

/** Low end of the standard bore in force, after any rebore on record. */
export const standardBore: Taker = (ask) => {
  const limit = seriesOf(ask, 'bore')?.limit ?? ask.book.limits.get('bore');
  const range = limit?.standard;
  const low = range?.low ?? range?.high;
  if (limit === undefined || range === undefined || low === undefined) return undefined;
  const { unit, decimals, text } = range;
  return {
    value: written({ quantity: low, unit, decimals, text }, limit.at),
    from: limit.name + ', standard in force',
  };
};

/** Compression of one record: all positions of the newest cold day, dry or with oil. */
export const compression =
  (wet: boolean): Taker =>
  (ask) => {
    const series = ask.book.series.filter((one) => one.item.startsWith('compression'));
    const all = series
      .flatMap((one) => readPoints(one, ask.which.at))
      .filter(({ point, written: value }) => {
        const oiled = point.condition.includes('oiled') || /oil/.test(point.condition.join(' '));
        return value.unit.dimension === 'gauge pressure' && oiled === wet;
      })
      .toSorted((a, b) => (a.point.day < b.point.day ? -1 : a.point.day > b.point.day ? 1 : 0));
    // Like with like: a hot reading is never set beside a cold one; cold ones, where there are any, are the baseline.
    const cold = all.filter(({ point }) => !/\b(?:hot|warm)\b/.test(point.condition.join(' ')));
    const points = cold.length > 0 ? cold : all;
    const last = points.at(-1);
    if (last === undefined) return undefined;
    const same = points.filter(({ point }) => point.job === last.point.job && point.side === last.point.side);
    return told(last, same.map(figureOfPoint));
  };

/** Highest dry compression of the newest record. */
export const highestCompression: Taker = (ask) => {
  const taken = compression(false)(ask);
  if (taken === undefined || typeof taken.value === 'string' || 'unit' in taken.value) return taken;
  const highest = taken.value.toSorted((a, b) => b.quantity - a.quantity)[0];
  return highest === undefined ? undefined : { ...taken, value: highest };
};

/** The date code of a tyre as it was read last. */
export const tyreCode: Taker = (ask) => {
  const wheel = ask.which.wheel ?? 'rear';
  const series = ask.book.series.find(
    (one) => /tyre|tire/.test(one.item) && one.item.includes('code') && one.item.includes(wheel),
  );
  const point = series?.points.findLast(
    (one) => one.corrected === undefined && one.value.kind === 'words' && /\d{3}/.test(one.value.text),
  );
  if (point?.value.kind !== 'words') return undefined;
  return { value: point.value.text, from: 'read last: ' + point.job.title + ', ' + point.day };
};
