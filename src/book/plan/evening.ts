// What can be done this evening, in so many minutes, with what is here, alone or with a helper; why not the rest; what would free most.
import type { Job } from '../../records/model.ts';
import type { Book } from '../book.ts';
import type { Obstacle } from './obstacle.ts';
import { jobsBefore, planOfWork } from './plan-of-work.ts';
import type { Plan, PlannedJob } from './plan-of-work.ts';
import { whatWouldFree } from './unlock.ts';
import type { Unlock } from './unlock.ts';

export interface Asked {
  /** Whole minutes that there are. */
  readonly minutes: number;
  readonly helper: boolean;
}

export interface NotTonight {
  readonly planned: PlannedJob;
  readonly because: readonly Obstacle[];
}

export interface Evening {
  readonly asked: Asked;
  readonly plan: Plan;
  /** In the order in which they are done. */
  readonly tonight: readonly PlannedJob[];
  /** Minutes left over after them. */
  readonly left: number;
  /** Nothing stands in the way, and nobody has said how long it takes. */
  readonly timeNotKnown: readonly PlannedJob[];
  readonly notTonight: readonly NotTonight[];
  /** What would free most, first. */
  readonly unlock: readonly Unlock[];
}

/** What still stands in the way when some jobs are done earlier the same evening. */
function standing(planned: PlannedJob, done: ReadonlySet<Job>, asked: Asked): readonly Obstacle[] {
  const rest = planned.obstacles.filter((one) => {
    const before = jobsBefore(one);
    return before.length === 0 || !before.every((job) => done.has(job));
  });
  const alone = planned.helper !== undefined && !asked.helper;
  return alone ? [...rest, { kind: 'helper', why: planned.helper }] : rest;
}

/** Obstacles of time: too long for the evening, or nobody knows how long. */
function ofTime({ estimate }: PlannedJob, left: number): readonly Obstacle[] {
  if (estimate.minutes === undefined) return [{ kind: 'time' }];
  return estimate.minutes > left ? [{ kind: 'time', minutes: estimate.minutes }] : [];
}

/** Takes jobs in the order of the plan as long as they fit; one that clears the way for another lets it in. */
function chosen(
  jobs: readonly PlannedJob[],
  asked: Asked,
): { readonly tonight: readonly PlannedJob[]; readonly left: number } {
  const tonight: PlannedJob[] = [];
  const done = new Set<Job>();
  let left = asked.minutes;
  for (const planned of jobs) {
    // The plan is sorted: whatever a job waits for has been looked at before it.
    if (standing(planned, done, asked).length > 0 || ofTime(planned, left).length > 0) continue;
    tonight.push(planned);
    done.add(planned.job);
    left -= planned.estimate.minutes ?? 0;
  }
  return { tonight, left };
}

/** Answers for a book; linear in the jobs but for what frees what. */
export function eveningOf(book: Book, asked: Asked): Evening {
  const plan = planOfWork(book);
  const { tonight, left } = chosen(plan.jobs, asked);
  const done = new Set(tonight.map(({ job }) => job));
  const rest = plan.jobs.filter(({ job }) => !done.has(job));
  const judged = rest.map((planned) => ({
    planned,
    because: [...standing(planned, done, asked), ...ofTime(planned, left)],
  }));
  const onlyTime = ({ because: [first, ...more] }: NotTonight): boolean =>
    first?.kind === 'time' && first.minutes === undefined && more.length === 0;
  const notTonight = judged.filter((one) => !onlyTime(one));
  return {
    asked,
    plan,
    tonight,
    left,
    timeNotKnown: judged.filter(onlyTime).map(({ planned }) => planned),
    notTonight,
    unlock: whatWouldFree(judged),
  };
}
