// The number of a step in its procedure: permanent, so that blanks keep their ids when a step is put between others later.
import type { Problem } from '../problem/problem.ts';
import { idTwice } from './check-ids.ts';
import type { Procedure, Step } from './content-model.ts';
import { below } from './reference.ts';

const ways = ['steps', 'assembly'] as const;

/** The number that a step carries, else its place among those that carry none, from 1. */
export function stepNumber(steps: readonly Step[], step: Step): number {
  return step.number ?? steps.filter((one) => one.number === undefined).indexOf(step) + 1;
}

/** Steps whose number another step of the same list has. */
export function checkStepNumbers({ at, ...procedure }: Procedure): readonly Problem[] {
  return ways.flatMap((way) => {
    const steps = procedure[way];
    if (steps.every((step) => step.number === undefined)) return [];
    const numbers = steps.map((step) => stepNumber(steps, step));
    return steps.flatMap((step, index) => {
      if (step.number === undefined) return [];
      const other = steps.findIndex(
        (one, place) => numbers[place] === step.number && (one.number === undefined || place < index),
      );
      if (other < 0) return [];
      return [idTwice(String(step.number), below(at, way, index, 'number'), below(at, way, other))];
    });
  });
}
