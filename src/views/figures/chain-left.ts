// How far a chain goes yet, worn evenly as since it was new: to each of the rules that disagree, and where to measure again.
import type { Book, SeriesPoint } from '../../book/book.ts';
import { renewedParts } from '../../book/due/rebuilt.ts';
import { hasHappened } from '../../book/in-order.ts';
import { makeNamer } from '../../book/names.ts';
import { linksIn } from '../../book/taken/from-chain.ts';
import type { Figure } from '../../figure/figure.ts';
import { of, ofSi, type Quantity } from '../../quantity/quantity.ts';
import { metreRidden } from '../../quantity/units.ts';
import type { Job } from '../../records/model.ts';
import { chainLimits } from './series.ts';

type Distance = Figure<'distance ridden'>;

export interface ChainLeft {
  readonly renewed: Job;
  readonly gone: Figure<'length'>;
  readonly over: Distance;
  readonly began: Figure<'length'>;
  readonly left: readonly { readonly rule: string; readonly distance: Distance }[];
  /** A quarter of the shortest way on: a weight of judgement. */
  readonly again?: Distance;
}

/** To the nearest hundred: a straight line through two points knows no more. */
function roundly(metres: number, like: Distance): number {
  const hundred = 100 * like.unit.factor;
  return Math.round(metres / hundred) * hundred;
}

function worked<D extends 'length' | 'distance ridden'>(
  like: Figure<D>,
  quantity: Quantity<D>,
  formula: string,
): Figure<D> {
  const inputs = [{ symbol: 'x', name: 'reading', figure: like }];
  const working = {
    calculation: 'chain-left',
    formula,
    inputs,
    source: 'straight-line wear: common practice, not a law',
  };
  return { quantity, unit: like.unit, decimals: like.decimals, origin: { kind: 'worked out', working } };
}

/** The last reading of a chain, with the machine's distance there. */
function lastReading(
  book: Book,
): { readonly point: SeriesPoint; readonly at: Distance; readonly links: number } | undefined {
  const series = book.series.find(({ item }) => linksIn(item) !== undefined);
  const links = series === undefined ? undefined : linksIn(series.item);
  const point = series?.points.findLast(({ value, corrected }) => value.kind === 'read' && corrected === undefined);
  if (point?.machineDistance === undefined || links === undefined) return undefined;
  return { point, at: point.machineDistance, links };
}

/** The last record that put a new chain on, before the reading. */
function renewal(book: Book, before: SeriesPoint): { readonly job: Job; readonly at: Distance } | undefined {
  const key = makeNamer(book.records.maker);
  const names = ['chain', 'drive chain', 'final chain'].map(key);
  const job = book.records.jobs
    .filter((one) => hasHappened(one) && one.date.from <= before.day && one !== before.job)
    .findLast((one) => names.some((name) => renewedParts(one, key).has(name)));
  const at = book.odometer.readings.find((one) => one.job === job?.id)?.machine;
  return job === undefined || at === undefined ? undefined : { job, at };
}

/** Undefined where the renewal, the pitch or a distance is not known, or no wear shows. */
export function chainLeft(book: Book): ChainLeft | undefined {
  const last = lastReading(book);
  const pitch = book.records.machine.geometry.chainPitch;
  if (last?.point.value.kind !== 'read' || pitch === undefined) return undefined;
  const fresh = renewal(book, last.point);
  const { written } = last.point.value;
  if (fresh === undefined || written.unit.dimension !== 'length') return undefined;
  const reading: Figure<'length'> = {
    quantity: ofSi<'length'>(written.quantity),
    unit: { ...pitch.unit, symbol: written.unit.symbol, factor: written.unit.factor },
    decimals: written.decimals,
    origin: { kind: 'written', at: last.point.at },
  };
  const began = pitch.quantity * last.links;
  const gone = reading.quantity - began;
  const over = last.at.quantity - fresh.at.quantity;
  if (gone <= 0 || over <= 0) return undefined;
  const left = chainLimits(book).flatMap(({ rule, figure }) => {
    const metres = roundly(((figure.quantity - reading.quantity) / gone) * over, last.at);
    const distance = worked(
      last.at,
      of(metres, metreRidden),
      'left = (limit − reading) / (reading − new) · distance since new',
    );
    return metres > 0 ? [{ rule, distance }] : [];
  });
  const [shortest] = left;
  const next = shortest === undefined ? undefined : roundly(last.at.quantity + shortest.distance.quantity / 4, last.at);
  return {
    renewed: fresh.job,
    gone: worked(reading, ofSi<'length'>(gone), 'gone = reading − links · pitch'),
    over: worked(last.at, of(over, metreRidden), 'over = distance now − distance when new'),
    began: worked(reading, ofSi<'length'>(began), 'new = links · pitch'),
    left,
    ...(next === undefined
      ? {}
      : { again: worked(last.at, of(next, metreRidden), 'again = distance now + a quarter of the shorter way') }),
  };
}
