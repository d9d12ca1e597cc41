// How far the machine went in each calendar year, so that what a year has cost can be held against it.
import type { Figure } from '../../figure/figure.ts';
import type { Day } from '../../quantity/day.ts';
import { readDay } from '../../quantity/day-arithmetic.ts';
import type { Book } from '../book.ts';
import { distanceBetween, type Ends } from './distance-between.ts';

type Distance = Figure<'distance ridden'>;

function dayOf(text: string): Day | undefined {
  const day = readDay(text);
  return day.ok ? day.value : undefined;
}

const ends: Ends = {
  formula: 'd = distance at the end of the year − distance at its beginning',
  from: { symbol: 'begin', name: 'distance at its beginning, or at the first record' },
  to: { symbol: 'end', name: 'distance at the end of the year, or at the last reading' },
  source: 'records of this machine; between two readings as if ridden evenly',
};

/**
 * By year, `2025`: from New Year to New Year between readings, in the first year from the first record's reading and in the last to the last one's.
 * A year is missing where the distance is not known at one of its ends. Only readings of records count: that it left the works at nothing
 * decades ago says nothing of one year.
 */
export function distanceByYear({ odometer }: Book): ReadonlyMap<string, Distance> {
  const read = odometer.readings.filter(({ machine, job }) => machine !== undefined && job !== undefined);
  const [first, last] = [read[0], read.at(-1)];
  if (first?.machine === undefined || last?.machine === undefined) return new Map();
  const found = new Map<string, Distance>();
  const [begin, end] = [Number(first.day.slice(0, 4)), Number(last.day.slice(0, 4))];
  for (let year = begin; year <= end; year += 1) {
    const from = year === begin ? first.machine : atNewYear(odometer, year);
    const to = year === end ? last.machine : atNewYear(odometer, year + 1);
    const ridden = from === undefined || to === undefined ? undefined : distanceBetween(from, to, ends);
    if (ridden !== undefined) found.set(String(year), ridden);
  }
  return found;
}

function atNewYear({ machineAt }: Book['odometer'], year: number): Distance | undefined {
  const day = dayOf(`${String(year)}-01-01`);
  return day === undefined ? undefined : machineAt(day);
}
