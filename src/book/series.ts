// Readings of one item over time, each judged by the limit in force on its day; corrections applied, renewals marked.
import type { Job, Limit } from '../records/model.ts';
import { keptByRun, keptFlat, runsOf } from '../records/runs.ts';
import { itemsByPart, renewals, type ByPart, type Renewal } from './basis.ts';
import type { Series, SeriesPoint } from './book.ts';
import type { CorrectionDone } from './corrections.ts';
import { correct } from './corrections.ts';
import type { Ground } from './ground.ts';
import type { Growing } from './growing-series.ts';
import { add, addOpen, begin, finish, measuredBy, renew, type Measured } from './growing-series.ts';
import type { OdometerWork } from './odometer.ts';
import { draftsOf, givenBy, judgingOf, pointsOf, readsOf, type Judging, type Side } from './points-of-record.ts';

export interface SeriesWork {
  readonly series: readonly Series[];
  /** By key of the item. */
  readonly byItem: ReadonlyMap<string, Series>;
  readonly corrections: readonly CorrectionDone[];
  /** Limits after repairs, by key. */
  readonly limits: ReadonlyMap<string, Limit>;
}

/** All series while they grow, by key of the item. */
type Garden = (key: string, written: string) => Growing;

/** What all records are read with. */
interface Desk {
  readonly ground: Ground;
  readonly judging: Judging;
  readonly odometer: OdometerWork;
  readonly garden: Garden;
}

/** One record: found before its work, renewals, then what was left; a repair judges only what was left. */
function addRecord(job: Job, renewed: readonly Renewal[], correctable: boolean, desk: Desk): void {
  const { ground, judging, odometer, garden } = desk;
  const distance = distanceAt(job, odometer);
  const reads = readsOf(job, ground.key).map((read) => ({ read, one: garden(read.item, read.reading.item) }));
  const given = correctable ? undefined : givenBy(job, judging, distance);
  const addSide = (side: Side): void => {
    for (const { read, one } of reads) {
      if (given === undefined) addOpen(one, job, draftsOf(job, read.reading, side, distance));
      else add(one, pointsOf(given, job, read, side, one.measure));
    }
  };
  addSide('found');
  for (const one of renewed) renew(garden(one.item, one.item), job.date.from, one.what, one.repair, judging);
  addSide('left');
}

function distanceAt(
  { id, readings, date }: Job,
  { readingOf, odometer }: OdometerWork,
): SeriesPoint['machineDistance'] {
  return readings.length === 0 ? undefined : (readingOf(id)?.machine ?? odometer.machineAt(date.from));
}

/** What a run of records gives to the series of one item. */
interface Piece extends Measured {
  readonly points: SeriesPoint[];
}

/** A run in which nothing is renewed and nothing corrected gives the same points again, under the same measures. */
const plainPieces = keptByRun(
  (run, judging: Judging, byPart: ByPart, odometer: OdometerWork): readonly Piece[] | undefined => {
    const pieces = new Map<string, Piece>();
    for (const job of run) {
      if (job.corrections.length > 0 || renewals(job, judging.key, byPart).length > 0) return undefined;
      if (job.readings.length === 0) continue;
      const given = givenBy(job, judging, distanceAt(job, odometer));
      const reads = readsOf(job, judging.key).map((read) => {
        const known = pieces.get(read.item);
        const piece = known ?? { ...measuredBy(read.item, read.reading.item, judging), points: [] };
        if (known === undefined) pieces.set(read.item, piece);
        return { read, piece };
      });
      for (const side of ['found', 'left'] as const) {
        for (const { read, piece } of reads) add(piece, pointsOf(given, job, read, side, piece.measure));
      }
    }
    return [...pieces.values()];
  },
);

const correctedBy = keptFlat(({ corrections }: Job) => corrections.map(({ record }) => record));

/** Reads all series off the records in order; linear in the readings. */
export function readingSeries(ground: Ground, odometer: OdometerWork): SeriesWork {
  const judging = judgingOf(ground);
  const growing = new Map<string, Growing>();
  const garden: Garden = (key, written) => {
    const known = growing.get(key);
    if (known !== undefined) return known;
    const fresh = begin(key, written, judging);
    growing.set(key, fresh);
    return fresh;
  };
  const corrected = new Set(correctedBy(ground.jobs));
  const desk: Desk = { ground, judging, odometer, garden };
  const byPart = itemsByPart(ground.limits, ground.key);
  const corrections: CorrectionDone[] = [];
  const plain = plainPieces(ground.jobs, judging, byPart, odometer);
  const asBegun = ({ key, measure }: Piece): boolean => (growing.get(key) ?? { measure }).measure === measure;
  runsOf(ground.jobs).forEach((run, index) => {
    const pieces = plain[index];
    const open = corrected.size > 0 && run.some(({ id }) => corrected.has(id));
    if (!open && pieces?.every(asBegun) === true) {
      for (const { key, written, points } of pieces) add(garden(key, written), points);
      return;
    }
    for (const job of run) {
      addRecord(job, renewals(job, ground.key, byPart), corrected.has(job.id), desk);
      for (const correction of job.corrections) {
        const item = ground.key(correction.item);
        if (item === 'odometer') continue;
        corrections.push(correct(growing.get(item)?.ofRecord.get(correction.record) ?? [], correction, job));
      }
    }
  });
  const read = [...growing.values()].filter((one) => one.points.length > 0);
  const byItem = new Map(read.map((one) => [one.key, finish(one, judging)]));
  const limits = new Map(ground.limits);
  for (const one of growing.values()) if (one.limit !== undefined) limits.set(one.key, one.limit);
  return { series: inMakersOrder(byItem, ground), byItem, corrections, limits };
}

/** Limits as the book lists them, then settings, then what the owner named, by first reading. */
function inMakersOrder(byItem: ReadonlyMap<string, Series>, ground: Ground): readonly Series[] {
  const places = new Map([...ground.limits.keys(), ...ground.settings.keys()].map((item, index) => [item, index]));
  const place = (item: string): number => places.get(item) ?? places.size;
  return [...byItem].toSorted((a, b) => place(a[0]) - place(b[0])).map(([, series]) => series);
}
