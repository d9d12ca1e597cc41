// Steps of the procedures of a plan that apply to this machine, numbered through, each with its bag.
import { numberedSteps, type NumberedStep } from '../../book/numbered-steps.ts';
import type { ViewContext } from '../view.ts';

export type { NumberedStep };

/** Steps in order over all procedures of the plan; none where the sheet has no plan. */
export function stepsOf({ book, plan }: ViewContext, way: 'steps' | 'assembly'): readonly NumberedStep[] {
  return plan === undefined ? [] : numberedSteps(book, plan, way);
}
