// Steps of the procedures of a plan, numbered through as they are printed, each with its place in content and its bag.
import type { Procedure, Step } from '../records/content-model.ts';
import { appliesTo } from './applies.ts';
import { stepPlace, type StepPlace } from './blank-ids.ts';
import type { Book, JobPlan } from './book.ts';

export interface NumberedStep {
  /** As printed, through all procedures of the plan. */
  readonly number: number;
  readonly step: Step;
  readonly procedure: Procedure;
  /** For its permanent ids. */
  readonly place: StepPlace;
  /** Number of the bag that this step fills. */
  readonly bag?: number;
}

/** Steps in order over all procedures of the plan that are for this machine; bags count from the plan's first number. */
export function numberedSteps(book: Book, plan: JobPlan, way: 'steps' | 'assembly'): readonly NumberedStep[] {
  const { features } = book.records.machine;
  const all = plan.procedures.flatMap((procedure) =>
    procedure[way].filter((step) => appliesTo(step.applies, features)).map((step) => ({ procedure, step })),
  );
  let bag = plan.bagFrom;
  return all.map(({ procedure, step }, index) => {
    const whole = book.content.procedures.get(procedure.id) ?? procedure;
    const place = stepPlace(plan.job.id, whole, way, step);
    const numbered = { number: index + 1, step, procedure, place };
    if (!step.bag) return numbered;
    bag += 1;
    return { ...numbered, bag: bag - 1 };
  });
}
