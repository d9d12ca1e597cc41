// The records in the order of the work: by date, then file; the order of files on disk never matters.
import type { Day } from '../quantity/day.ts';
import type { Job } from '../records/model.ts';

/** Plain text order, the same on every machine and in every language. */
export function byText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** Jobs by first day, then by file. */
export function inOrder(jobs: readonly Job[]): readonly Job[] {
  return [...jobs].sort((a, b) => byText(a.date.from, b.date.from) || byText(a.file, b.file));
}

/** A planned job has blanks, not work; everything else has happened. */
export function hasHappened(job: Job): boolean {
  return job.state !== 'planned';
}

/** Work that was done by `today`, and all that is still to come: what is known on that day. The rest was done later, or its date is wrong. */
export function knownOn(today: Day): (job: Job) => boolean {
  return (job) => job.date.from <= today || job.state === 'planned' || job.state === 'waiting';
}

/** More records than this from after the day: the binder is made for a day long past, and no date is merely typed wrong. */
export const mistyped = 3;

/** Jobs planned for after the first of the work that was done later: on a day long past nobody had planned them yet. */
export function plansOfLater(later: readonly Job[]): (job: Job) => boolean {
  const first = later.length > mistyped ? later[0]?.date.from : undefined;
  return (job) => first !== undefined && job.state === 'planned' && job.date.from > first;
}

/** The last day a record is sure of: its last day, or the first of a month or year that stands alone. */
export function lastSureDay(job: Job): Day {
  return job.date.whole === undefined ? job.date.to : job.date.from;
}
