// Steps of the procedures of a plan that apply to this machine, numbered through, each with its bag.
import type { Procedure, Step } from '../../records/content-model.ts';
import type { ViewContext } from '../view.ts';
import { appliesTo } from '../../book/applies.ts';

export interface NumberedStep {
  readonly number: number;
  readonly step: Step;
  readonly procedure: Procedure;
  /** Number of the bag that this step fills. */
  readonly bag?: number;
}

/** Steps in order over all procedures of the plan; bags count from the first number that is free. */
export function stepsOf(context: ViewContext, way: 'steps' | 'assembly'): readonly NumberedStep[] {
  const { features } = context.book.records.machine;
  const all = (context.plan?.procedures ?? []).flatMap((procedure) =>
    procedure[way].filter((step) => appliesTo(step.applies, features)).map((step) => ({ procedure, step })),
  );
  let bag = context.plan?.bagFrom ?? 1;
  return all.map(({ procedure, step }, index) => {
    const numbered = { number: index + 1, step, procedure };
    if (!step.bag) return numbered;
    bag += 1;
    return { ...numbered, bag: bag - 1 };
  });
}
