// The entries of one verb: many looks ask for what was tightened or filled, and one walk over thousands of records is enough for all.
import type { Job, Verb, WorkEntry } from '../records/model.ts';
import type { Ground } from './ground.ts';

export interface Done {
  readonly job: Job;
  readonly entry: WorkEntry;
}

const walked = new WeakMap<Ground, ReadonlyMap<Verb, readonly Done[]>>();

function walk({ jobs }: Ground): ReadonlyMap<Verb, readonly Done[]> {
  const found = new Map<Verb, Done[]>();
  for (const job of jobs) {
    for (const entry of job.work) {
      const list = found.get(entry.verb);
      if (list === undefined) found.set(entry.verb, [{ job, entry }]);
      else list.push({ job, entry });
    }
  }
  return found;
}

/** What was done with this verb, in the order of the records; what is only planned is not among it. */
export function workDone(ground: Ground, verb: Verb): readonly Done[] {
  const known = walked.get(ground);
  const all = known ?? walk(ground);
  if (known === undefined) walked.set(ground, all);
  return all.get(verb) ?? [];
}
