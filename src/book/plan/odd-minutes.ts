// What can be done in odd minutes and stands in no job: first steps that others wait for, looks that keep a hold point held, services that press.
import type { Book, CheckState, DueLine, OpenLine } from '../book.ts';
import type { Place } from '../../problem/problem.ts';
import type { HoldPoint } from '../../records/content-model.ts';
import type { StepToDo } from '../work-order.ts';
import { workOrder } from '../work-order.ts';
import { notOnFor } from '../not-on-it.ts';

export interface OddMinutes {
  /** In no job, and nothing must come before them. */
  readonly firstSteps: readonly StepToDo[];
  /** Checks done by looking or feeling, of the earliest point that is held. */
  readonly looks?: { readonly point: HoldPoint; readonly checks: readonly CheckState[] };
  readonly due: readonly DueLine[];
  /** The same, put off: what must be fitted for them is off. */
  readonly putOff: readonly PutOff[];
}

/** What it is, in the words of its content or of the maker's data, and what is off. */
export interface PutOff {
  readonly id: string;
  readonly text: string;
  readonly at: Place;
  readonly line: OpenLine;
}

const pressing: ReadonlySet<DueLine['state']> = new Set(['overdue', 'due', 'at its limit']);
const byEye: ReadonlySet<string> = new Set(['look', 'feel']);

/** What is small enough to need no plan; all of it, in the order in which it presses. */
export function oddMinutes(book: Book): OddMinutes {
  const { steps } = workOrder(book);
  const waits = new Set(steps.flatMap(({ waiting }) => waiting.map(({ after }) => after)));
  const free = steps.filter(({ step, jobs }) => jobs.length === 0 && !waits.has(step.id));
  const named = new Set(book.plans.flatMap(({ job }) => job.services));
  const held = book.holds.find(({ clear, released }) => !clear && released === undefined);
  const checks = (held?.checks ?? []).filter(
    ({ check, state }) => byEye.has(check.proof) && (state === 'not proved' || state === 'undone'),
  );
  const pressed = book.due.filter(({ state, service }) => pressing.has(state) && !named.has(service.id));
  const can = checks.filter(({ check }) => notOnFor(book, check.id) === undefined);
  const looks = held === undefined || can.length === 0 ? {} : { looks: { point: held.point, checks: can } };
  return {
    firstSteps: free.filter(({ notOn }) => notOn === undefined),
    due: pressed.filter(({ service }) => notOnFor(book, service.id) === undefined),
    ...looks,
    putOff: putOff(book, [
      ...free.map(({ step: { id, step, at } }) => ({ id, text: step, at })),
      ...checks.map(({ check: { id, text, at } }) => ({ id, text, at })),
      ...pressed.map(({ service: { id, item, at } }) => ({ id, text: item, at })),
    ]),
  };
}

function putOff(book: Book, all: readonly Omit<PutOff, 'line'>[]): readonly PutOff[] {
  return all.flatMap((one) => {
    const line = notOnFor(book, one.id);
    return line === undefined ? [] : [{ ...one, line }];
  });
}
