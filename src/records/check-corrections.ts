// A correction names a record and something that stands in it.
import type { Problem } from '../problem/problem.ts';
import type { Correction, Job, Records } from './model.ts';
import { below, unknownReference } from './reference.ts';
import { unreadIds } from './unread-ids.ts';

/** Corrections of records that do not exist, or of readings that they do not have. */
export function checkCorrections(records: Records): readonly Problem[] {
  const { jobs } = records;
  if (!jobs.some((job) => job.corrections.length > 0)) return [];
  const byId = new Map(jobs.map((job) => [job.id, job]));
  const unreadNames = new Set(unreadIds(records));
  return jobs.flatMap((job) => job.corrections.flatMap((correction) => ofCorrection(correction, byId, unreadNames)));
}

function ofCorrection(
  correction: Correction,
  byId: ReadonlyMap<string, Job>,
  unread: ReadonlySet<string>,
): readonly Problem[] {
  const job = byId.get(correction.record);
  if (job === undefined) {
    const known = unread.has(correction.record);
    return known
      ? []
      : [unknownReference(correction.record, below(correction.at, 'record'), 'job record', byId.keys())];
  }
  const items = new Set([...job.readings.map((reading) => reading.item), ...otherKeys]);
  if (items.has(correction.item)) return [];
  return [unknownReference(correction.item, below(correction.at, 'item'), `reading in ${job.file}`, items)];
}

/** What can be wrong in a record besides its readings. */
const otherKeys = [
  'odometer',
  'date',
  'time',
  'work',
  'parts',
  'money',
  'findings',
  'checks',
  'ride',
  'services',
] as const;
