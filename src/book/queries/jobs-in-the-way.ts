// Two jobs on one day that want the same thing: two people in each other's way.
import type { Job } from '../../records/model.ts';
import { appliesTo } from '../applies.ts';
import type { Ground } from '../ground.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** What the procedures of a job take off or turn, as it is named there, by key. */
function wanted(job: Job, ground: Ground): ReadonlyMap<string, string> {
  const { features } = ground.records.machine;
  const steps = job.procedures.flatMap((id) => {
    const procedure = ground.content.procedures.get(id);
    return procedure === undefined ? [] : [...procedure.steps, ...procedure.assembly];
  });
  const things = steps
    .filter((step) => appliesTo(step.applies, features))
    .flatMap((step) => [...step.off, ...step.fasteners]);
  return new Map(things.map((thing) => [ground.key(thing), thing]));
}

function sameDay(a: Job, b: Job): boolean {
  return a.date.from <= b.date.to && b.date.from <= a.date.to;
}

/** Planned or under way, by procedures; of different hands, where both name theirs. Few jobs are open at once. */
export const jobsInTheWay: Look = ({ ground }) => {
  const open = ground.all.filter(
    (job) =>
      (job.state === 'planned' || job.state === 'under way') && job.procedures.length > 0 && job.hands.length > 0,
  );
  return open.flatMap((job, index) =>
    open.slice(index + 1).flatMap((other) => {
      if (!sameDay(job, other) || job.hands.some((hand) => other.hands.includes(hand))) return [];
      const theirs = wanted(other, ground);
      const both = [...wanted(job, ground)].filter(([key]) => theirs.has(key)).map(([, thing]) => thing);
      if (both.length === 0) return [];
      const message = `${job.title} and ${other.title} are for one day, and both want ${both.join(', ')}`;
      const hint = 'one after the other, or on two days';
      return [query('jobs-in-each-others-way', { file: other.file, path: ['date'] }, message, hint)];
    }),
  );
};
