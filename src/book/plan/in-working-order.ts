// Jobs in an order in which none comes before what it waits for; where two are free, what keeps a hold point held goes first.
import type { Job } from '../../records/model.ts';
import { byText } from '../in-order.ts';
import type { Plan, PlannedJob } from './plan-of-work.ts';
import { jobsBefore } from './plan-of-work.ts';

type Unsorted = Omit<PlannedJob, 'waiting'>;

/** Earliest hold point first, then what others wait for, then the oldest. */
function urgency(a: Unsorted, b: Unsorted, waiting: ReadonlyMap<Job, ReadonlySet<Job>>): number {
  const rank = ({ holds }: Unsorted): number => holds?.order ?? Number.MAX_SAFE_INTEGER;
  const many = ({ job }: Unsorted): number => waiting.get(job)?.size ?? 0;
  return (
    rank(a) - rank(b) || many(b) - many(a) || byText(a.job.date.from, b.job.date.from) || byText(a.job.file, b.job.file)
  );
}

/** From each job to the open jobs that wait for it. */
function waitingFor(planned: readonly Unsorted[]): ReadonlyMap<Job, ReadonlySet<Job>> {
  const waiting = new Map(planned.map(({ job }) => [job, new Set<Job>()]));
  for (const { job, obstacles } of planned)
    for (const before of obstacles.flatMap(jobsBefore)) if (before !== job) waiting.get(before)?.add(job);
  return waiting;
}

/** Of the jobs that could not be sorted, those that wait for each other: what merely waits for such a ring is left away. */
function ringOf(left: readonly Job[], waiting: ReadonlyMap<Job, ReadonlySet<Job>>): readonly Job[] {
  const ring = new Set(left);
  for (let size = -1; size !== ring.size;) {
    size = ring.size;
    for (const job of left) if (![...(waiting.get(job) ?? [])].some((one) => ring.has(one))) ring.delete(job);
  }
  return left.filter((job) => ring.has(job));
}

/** Sorts the jobs; those that wait for each other in a ring come last, and are named. */
export function inWorkingOrder(planned: readonly Unsorted[]): Plan {
  const waiting = waitingFor(planned);
  const owed = new Map(planned.map(({ job }) => [job, 0]));
  for (const jobs of waiting.values()) for (const job of jobs) owed.set(job, (owed.get(job) ?? 0) + 1);
  const left = planned.toSorted((a, b) => urgency(a, b, waiting));
  const out: Unsorted[] = [];
  for (;;) {
    const at = left.findIndex(({ job }) => owed.get(job) === 0);
    const [next] = at < 0 ? [] : left.splice(at, 1);
    if (next === undefined) break;
    out.push(next);
    for (const job of waiting.get(next.job) ?? []) owed.set(job, (owed.get(job) ?? 0) - 1);
  }
  return {
    jobs: [...out, ...left].map((one) => ({ ...one, waiting: [...(waiting.get(one.job) ?? [])] })),
    inTwoGoes: ringOf(
      left.map(({ job }) => job),
      waiting,
    ),
  };
}
