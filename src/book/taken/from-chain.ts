// What a measured chain and the rides give: the length over so many links and its limit, and oil and fuel of the last ride.
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import { of, ofSi } from '../../quantity/quantity.ts';
import { one } from '../../quantity/units.ts';
import type { Series } from '../book.ts';
import { figureOfPoint, readPoints } from './from-readings.ts';
import type { Ask, Taken, Taker } from './taken.ts';

/** `chain-20-links` counts twenty pitches. */
export function linksIn(item: string): number | undefined {
  const found = /chain\D*(\d+)[\s-]*(?:links|pitches)/.exec(item)?.[1];
  return found === undefined ? undefined : Number(found);
}

function chainSeries({ book }: Ask): Series | undefined {
  return book.series.find((series) => linksIn(series.item) !== undefined);
}

export const chainLength: Taker = (ask) => {
  const last = readPoints(chainSeries(ask)).at(-1);
  if (last === undefined) return undefined;
  return { value: figureOfPoint(last), from: 'read last: ' + last.point.job.title + ', ' + last.point.day };
};

export const chainPitches: Taker = (ask) => {
  const series = chainSeries(ask);
  const links = series === undefined ? undefined : linksIn(series.item);
  const at = series?.limit?.at ?? readPoints(series).at(-1)?.point.at;
  if (links === undefined || at === undefined) return undefined;
  const figure: Figure = { quantity: of(links, one), unit: one, decimals: 0, origin: { kind: 'written', at } };
  return { value: figure, from: 'the name of the item' };
};

export const chainLimit: Taker = (ask) => {
  const limit = chainSeries(ask)?.limit;
  const high = limit?.limit?.high;
  if (limit?.limit === undefined || high === undefined) return undefined;
  const { unit, decimals, text } = limit.limit;
  return { value: written({ quantity: high, unit, decimals, text }, limit.at), from: limit.name + ', limit' };
};

const ofRide =
  (side: 'oil' | 'fuel' | 'distance'): Taker =>
  ({ book }): Taken | undefined => {
    const job = book.records.jobs
      .filter((each) => each.ride?.oil !== undefined && each.ride.fuel !== undefined)
      .toSorted((a, b) => (a.date.from < b.date.from ? -1 : 1))
      .at(-1);
    const ride = job?.ride;
    if (job === undefined || ride === undefined) return undefined;
    const from = 'ride: ' + job.title + ', ' + job.date.from;
    const at = { file: job.file, path: ['ride', side] };
    if (side !== 'distance') {
      const value = ride[side];
      return value === undefined ? undefined : { value: written(value, at, job.title), from };
    }
    if (ride.in === undefined || ride.out === undefined) return undefined;
    const value = { ...ride.in, quantity: ofSi<'distance ridden'>(ride.in.quantity - ride.out.quantity) };
    return { value: written(value, at, job.title), from };
  };

export const oilOfRide = ofRide('oil');
export const fuelOfRide = ofRide('fuel');
export const distanceOfRide = ofRide('distance');
