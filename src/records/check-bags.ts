// A bag that something is taken from must have been filled: before, or on the same day.
import type { Problem } from '../problem/problem.ts';
import type { Records } from './model.ts';
import { below, unknownReference } from './reference.ts';

/** `from bag` with a bag that nothing was put into up to that job. */
export function checkBags({ jobs, unread }: Records): readonly Problem[] {
  // A record that could not be read may be the one that filled the bag.
  if (unread.length > 0) return [];
  const filled = new Set<string>();
  return jobs.flatMap((job) => {
    for (const entry of job.work) if (entry.bag !== undefined) filled.add(entry.bag);
    return job.work.flatMap((entry): readonly Problem[] => {
      if (entry.fromBag === undefined || filled.has(entry.fromBag)) return [];
      const problem = unknownReference(entry.fromBag, below(entry.at, 'from bag'), 'bag', filled);
      return [
        { ...problem, code: 'bag-unknown', message: `Nothing was put into a bag “${entry.fromBag}” before this.` },
      ];
    });
  });
}
