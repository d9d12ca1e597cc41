// Readings against the limit or setting of their name: the positions must be its own.
import type { Problem } from '../problem/problem.ts';
import { keptWith } from './kept-with.ts';
import type { Job, Limit, MakerData, Reading, ReadingValue, Records } from './model.ts';
import { nearest } from './nearest.ts';
import { keptFlat } from './runs.ts';

/** Positions that the limit does not have. */
export function checkReadings({ maker, jobs }: Records): readonly Problem[] {
  return ofJobs(jobs, limitsOf(maker));
}

const limitsOf = keptWith((maker: MakerData) => new Map(maker.limits.map((limit) => [limit.id, limit])));

const ofJobs = keptFlat((job: Job, limits: ReadonlyMap<string, Limit>) =>
  job.readings.flatMap((reading) => ofReading(reading, limits.get(reading.item))),
);

function ofReading(reading: Reading, limit: Limit | undefined): readonly Problem[] {
  if (limit === undefined || limit.positions.length === 0) return [];
  return [...reading.found, ...reading.left].flatMap((value) => ofPosition(value, limit));
}

function ofPosition(value: ReadingValue, limit: Limit): readonly Problem[] {
  if (value.position === '' || limit.positions.includes(value.position)) return [];
  const near = nearest(value.position, limit.positions);
  const hint = near.length > 0 ? `Did you mean “${near[0] ?? ''}”?` : `Its positions: ${limit.positions.join(', ')}.`;
  const message = `“${limit.id}” is not measured at a position “${value.position}”.`;
  return [{ code: 'position-unknown', severity: 'problem', at: { ...value.at, atKey: true }, message, hint }];
}
