// How long a job will take, and who says so: the owner beforehand, the record of the last time, or the plain estimate of its procedures.
import { formatDecimal } from '../../quantity/decimal.ts';
import { inUnit } from '../../quantity/quantity.ts';
import { minute } from '../../quantity/units.ts';
import type { Procedure } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import type { Book } from '../book.ts';

export interface Estimate {
  /** Whole minutes; absent: nobody has said. */
  readonly minutes?: number;
  /** Whose reckoning it is, in words. */
  readonly from: string;
}

const unknown: Estimate = { from: 'nobody has said how long it takes' };

/** `1 h 30 min`, `45 min`. */
export function minutesText(minutes: number): string {
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  const words = [
    ...(hours > 0 ? [`${formatDecimal(hours, 0)}\u00a0h`] : []),
    ...(rest > 0 || hours === 0 ? [`${formatDecimal(rest, 0)}\u00a0min`] : []),
  ];
  return words.join('\u00a0');
}

/** Minutes of the last record of each procedure that followed it and no other: what it took is better known than any estimate. */
function tookBefore(book: Book): ReadonlyMap<string, { readonly minutes: number; readonly job: Job }> {
  const took = new Map<string, { readonly minutes: number; readonly job: Job }>();
  for (const job of book.records.jobs) {
    const [only, ...others] = job.procedures;
    if (only === undefined || others.length > 0 || job.state !== 'done' || job.time === undefined) continue;
    took.set(only, { minutes: Math.round(inUnit(job.time.quantity, minute)), job });
  }
  return took;
}

/** A way to reckon any open job of the book; what was learned from earlier records is looked up once. */
export function estimator(book: Book): (job: Job, procedures: readonly Procedure[]) => Estimate {
  const took = tookBefore(book);
  return (job, procedures) => {
    if (job.takes !== undefined)
      return { minutes: Math.round(inUnit(job.takes.quantity, minute)), from: 'as you reckoned' };
    if (procedures.length === 0 || procedures.length < job.procedures.length) return unknown;
    const each = procedures.map((one) => ({ said: one.minutes, before: took.get(one.id)?.minutes }));
    const known = each.flatMap(({ said, before }) => before ?? said ?? []);
    if (known.length < each.length) return unknown;
    const learned = each.filter(({ before }) => before !== undefined).length;
    const plain = learned === 0 ? 'a plain estimate' : 'partly as it took before, partly a plain estimate';
    const from = learned === each.length ? 'as it took before' : plain;
    return { minutes: known.reduce((sum, one) => sum + one, 0), from };
  };
}
