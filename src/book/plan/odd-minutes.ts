// What can be done in odd minutes and stands in no job: first steps that others wait for, looks that keep a hold point held, services that press.
import type { Book, CheckState, DueLine } from '../book.ts';
import type { HoldPoint } from '../../records/content-model.ts';
import type { StepToDo } from '../work-order.ts';
import { workOrder } from '../work-order.ts';

export interface OddMinutes {
  /** In no job, and nothing must come before them. */
  readonly firstSteps: readonly StepToDo[];
  /** Checks done by looking or feeling, of the earliest point that is held. */
  readonly looks?: { readonly point: HoldPoint; readonly checks: readonly CheckState[] };
  readonly due: readonly DueLine[];
}

const pressing: ReadonlySet<DueLine['state']> = new Set(['overdue', 'due', 'at its limit']);
const byEye: ReadonlySet<string> = new Set(['look', 'feel']);

/** What is small enough to need no plan; all of it, in the order in which it presses. */
export function oddMinutes(book: Book): OddMinutes {
  const { steps } = workOrder(book);
  const waits = new Set(steps.flatMap(({ waiting }) => waiting.map(({ after }) => after)));
  const firstSteps = steps.filter(({ step, jobs }) => jobs.length === 0 && !waits.has(step.id));
  const named = new Set(book.plans.flatMap(({ job }) => job.services));
  const held = book.holds.find(({ clear, released }) => !clear && released === undefined);
  const checks = (held?.checks ?? []).filter(
    ({ check, state }) => byEye.has(check.proof) && (state === 'not proved' || state === 'undone'),
  );
  const looks = held === undefined || checks.length === 0 ? {} : { looks: { point: held.point, checks } };
  return {
    firstSteps,
    due: book.due.filter(({ state, service }) => pressing.has(state) && !named.has(service.id)),
    ...looks,
  };
}
