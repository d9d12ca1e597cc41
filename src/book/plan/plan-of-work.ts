// The plan: every open job in an order in which it can be done, with its time, who is needed, and what stands in its way.
import type { HoldPoint, Procedure } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import type { Book } from '../book.ts';
import { heldUntil } from '../held-until.ts';
import { pointsBefore } from '../holds.ts';
import { keptOfBook } from '../kept-of-book.ts';
import type { PartLine } from '../shopping/part-lines.ts';
import { partLines } from '../shopping/part-lines.ts';
import type { JobInOrder } from '../work-order.ts';
import { workOrder } from '../work-order.ts';
import { backOnFirst } from './back-on-first.ts';
import { chainOf } from './chain-of-records.ts';
import type { Estimate } from './estimate.ts';
import { estimator } from './estimate.ts';
import { inWorkingOrder } from './in-working-order.ts';
import type { Obstacle } from './obstacle.ts';

export interface PlannedJob {
  readonly job: Job;
  readonly procedures: readonly Procedure[];
  readonly estimate: Estimate;
  /** Why a second person is needed; absent: one is enough. */
  readonly helper?: string;
  /** All but time and helper, which depend on the evening. */
  readonly obstacles: readonly Obstacle[];
  readonly inHand: readonly PartLine[];
  /** Bought only when something turns out: named, and no obstacle. */
  readonly perhaps: readonly PartLine[];
  /** The first hold point that stays held until the job is done. */
  readonly holds?: HoldPoint;
  /** Open jobs that wait for this one. */
  readonly waiting: readonly Job[];
}

export interface Plan {
  readonly jobs: readonly PlannedJob[];
  /** Jobs that wait for each other by their steps: one of them is done in two goes. */
  readonly inTwoGoes: readonly Job[];
}

/** What the records and the procedures say of a second person. */
function helperFor(job: Job, procedures: readonly Procedure[]): string | undefined {
  if (job.helper !== undefined) return job.helper ? 'it takes two, as you wrote' : undefined;
  const two = procedures.find((one) => one.helper === true);
  if (two !== undefined) return `${two.title}: it takes two`;
  return job.hands.length > 1 ? `planned with ${job.hands.join(' and ')}` : undefined;
}

/** Parts that the job waits for, has in the house, or may turn out to need. */
type OwnParts = Pick<PlannedJob, 'inHand' | 'perhaps'> & { readonly awaited: readonly PartLine[] };

function ownParts(lines: readonly PartLine[]): OwnParts {
  const sure = lines.filter(({ part }) => part.onlyIf === undefined);
  return {
    inHand: sure.filter(({ part }) => part.state === 'here'),
    awaited: sure.filter(({ part }) => part.state !== 'here'),
    perhaps: lines.filter(({ part }) => part.onlyIf !== undefined && part.state !== 'here'),
  };
}

interface Table {
  readonly book: Book;
  readonly order: ReadonlyMap<Job, JobInOrder>;
  readonly open: ReadonlyMap<string, Job>;
}

function obstaclesOf(job: Job, awaited: readonly PartLine[], { book, order, open }: Table): readonly Obstacle[] {
  const chain = chainOf(job, book);
  const away = book.off.open.filter((line) => line.state === 'sent out' && chain.has(line.job));
  const before = (job.after ?? []).flatMap((id) => open.get(id) ?? []);
  const points = pointsBefore(job).flatMap((id) => book.holds.find(({ point }) => point.id === id) ?? []);
  const held = points.filter(({ clear, released }) => !clear && released === undefined);
  return [
    ...(job.state === 'waiting' ? [{ kind: 'waiting', of: job.waitingFor ?? 'something not named' } as const] : []),
    ...before.map((one) => ({ kind: 'job', job: one }) as const),
    ...(order.get(job)?.first ?? []).map(
      ({ step, jobs, waiting, notOn }) =>
        ({ kind: 'step', step, jobs, why: waiting[0]?.why ?? '', ...(notOn === undefined ? {} : { notOn }) }) as const,
    ),
    ...backOnFirst(book, job, order.get(job)?.own ?? [], [...open.values()]),
    ...held.map(
      ({ point, because = [] }) => ({ kind: 'hold', point, open: because.length, first: because[0] ?? '' }) as const,
    ),
    ...away.map((line) => ({ kind: 'away', line }) as const),
    ...awaited.map((line) => ({ kind: 'part', line }) as const),
  ];
}

/** Open jobs that an obstacle waits for. */
export function jobsBefore(obstacle: Obstacle): readonly Job[] {
  if (obstacle.kind === 'job') return [obstacle.job];
  return obstacle.kind === 'step' || obstacle.kind === 'not on' ? obstacle.jobs : [];
}

/** The plan of all open jobs: linear in the records, and in the jobs times the steps of the order, which are few. */
export const planOfWork = keptOfBook(planOf);

function planOf(book: Book): Plan {
  const { jobs } = workOrder(book);
  const table: Table = {
    book,
    order: new Map(jobs.map((one) => [one.job, one])),
    open: new Map(jobs.map(({ job }) => [job.id, job])),
  };
  const plans = new Map(book.plans.map((plan) => [plan.job, plan]));
  const lines = byJob(partLines(book));
  const reckon = estimator(book);
  const planned = jobs.map(({ job }): Omit<PlannedJob, 'waiting'> => {
    const procedures =
      plans.get(job)?.procedures ?? job.procedures.flatMap((id) => book.content.procedures.get(id) ?? []);
    const { awaited, inHand, perhaps } = ownParts(lines.get(job) ?? []);
    const helper = helperFor(job, procedures);
    const holds = heldUntil(book, job);
    return {
      job,
      procedures,
      estimate: reckon(job, procedures),
      obstacles: obstaclesOf(job, awaited, table),
      inHand,
      perhaps,
      ...(helper === undefined ? {} : { helper }),
      ...(holds === undefined ? {} : { holds }),
    };
  });
  return inWorkingOrder(planned);
}

function byJob(lines: readonly PartLine[]): ReadonlyMap<Job, readonly PartLine[]> {
  const found = new Map<Job, PartLine[]>();
  for (const line of lines) {
    const list = found.get(line.job);
    if (list === undefined) found.set(line.job, [line]);
    else list.push(line);
  }
  return found;
}
