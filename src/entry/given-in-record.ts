// What a job's record says already at a blank of a sheet of the machine, which is printed for every job alike and cannot say it itself.
import { inRecord } from '../book/blank-ids.ts';
import type { Job } from '../records/model.ts';
import type { Blank } from './blank.ts';
import { readingTarget } from './machine-targets.ts';

/** The blank with what the record says there, where the sheet does not. */
export function withGiven(job: Job, blank: Blank): Blank {
  const given = blank.given ?? ticked(job, blank) ?? written(job, blank);
  return given === undefined ? blank : { ...blank, given };
}

function ticked(job: Job, { id }: Blank): string | undefined {
  // Of a hold point, `<point>/<check>`; a line of a form may end in the same word.
  const check = /^(?:[^/]+|.*\/check)\/([^/]+)$/u.exec(id)?.[1] ?? '';
  const service = /^(?:service|running-in)\/([^/]+)$/u.exec(id)?.[1];
  const isTicked = job.ticks?.includes(inRecord(job.id, id)) === true;
  const isProved = job.checks.some((one) => one.check === check);
  return isTicked || isProved || job.services.includes(service ?? '') ? 'yes' : undefined;
}

function written(job: Job, { id }: Blank): string | undefined {
  if (id.startsWith('today/1/')) return headOf(job, id);
  const row = /^run-log\/(\d+)\//u.exec(id)?.[1];
  if (row !== undefined) return job.runLog.find(({ minute }) => minute === Number(row) - 1)?.saw;
  return read(job, id) ?? job.remarks?.findLast((one) => one.blank === inRecord(job.id, id))?.says;
}

/** The first value that the record has at this place; another hand’s stands beside it. */
function read(job: Job, id: string): string | undefined {
  const target = readingTarget(id);
  if (target === undefined) return undefined;
  const values = job.readings.filter(({ item }) => item === target.item).flatMap((one) => one[target.side]);
  const value = values.find(({ position }) => position === target.position)?.value;
  if (value === undefined || value.kind === 'unknown') return undefined;
  return value.kind === 'words' ? value.text : value.written.text;
}

/** The head of a sheet filled in at the machine; the day of a planned job is not yet that of the work. */
function headOf(job: Job, id: string): string | undefined {
  if (id === 'today/1/1') return job.state === 'planned' ? undefined : job.date.to;
  if (id === 'today/1/2') return job.odometer?.text;
  if (id === 'today/1/4') return job.hands.length === 0 ? undefined : job.hands.join(', ');
  return job.remarks?.findLast((one) => one.blank === id)?.says;
}
