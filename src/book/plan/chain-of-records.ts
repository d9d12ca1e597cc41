// The records that a job goes on from.
import type { Job } from '../../records/model.ts';
import type { Book } from '../book.ts';

/** Itself first, then what it continues, as far back as it goes. */
export function chainOf(job: Job, book: Book): ReadonlySet<Job> {
  const chain = new Set([job]);
  for (let last: Job | undefined = job; last !== undefined;) {
    const before: Job | undefined = last.continues === undefined ? undefined : book.jobs.get(last.continues);
    last = before === undefined || chain.has(before) ? undefined : before;
    if (last !== undefined) chain.add(last);
  }
  return chain;
}
