// Which hold point a job keeps held: the first with a check that its work undoes, or has undone and not put back.
import type { Book } from './book.ts';
import type { HoldPoint } from '../records/content-model.ts';
import type { Job } from '../records/model.ts';

/** Everything the job takes off, touches or disturbs, as far as it is not closed again. */
function thingsOf(book: Book, job: Job): ReadonlySet<string> {
  const open = book.off.open.filter((line) => line.job.id === job.id).map((line) => line.entry.thing);
  const planned = book.plans
    .filter((plan) => plan.job.id === job.id)
    .flatMap(({ procedures }) =>
      procedures.flatMap((one) => [...one.disturbs, ...one.steps.flatMap((step) => [...step.off, ...step.fasteners])]),
    );
  return new Set([...open, ...planned].map((thing) => thing.toLowerCase()));
}

/** The earliest hold point, in the order of the points; undefined where the job undoes none. */
export function heldUntil(book: Book, job: Job): HoldPoint | undefined {
  const things = thingsOf(book, job);
  if (things.size === 0) return undefined;
  const inOrder = book.holds.toSorted((one, other) => one.point.order - other.point.order);
  return inOrder.find(({ checks }) =>
    checks.some(
      ({ check, state }) =>
        state !== 'not for this machine' && check.undoneBy.some((thing) => things.has(thing.toLowerCase())),
    ),
  )?.point;
}
