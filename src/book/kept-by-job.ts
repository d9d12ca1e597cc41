// What follows from one record alone, kept for as long as the record is: while a binder is served, one record changes and a thousand do not.
import type { Job } from '../records/model.ts';
import type { Namer } from './names.ts';

/**
 * The same answer for the same record under the same names, worked out once. `make` may look at nothing but the record and the
 * namer, and its answer must never be changed.
 */
export function keptByJob<T>(make: (job: Job, key: Namer) => T): (job: Job, key: Namer) => T {
  const known = new WeakMap<Job, { readonly key: Namer; readonly made: T }>();
  return (job, key) => {
    const before = known.get(job);
    if (before?.key === key) return before.made;
    const made = make(job, key);
    known.set(job, { key, made });
    return made;
  };
}
