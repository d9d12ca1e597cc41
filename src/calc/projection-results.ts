// What a projection comes to as results of a calculation: where the limit is reached, what is left, where to measure again, and why not.
import { kilometre } from '../quantity/units.ts';
import type { Result } from './calculation.ts';
import { result, saying } from './input.ts';
import type { Projection } from './wear-projection.ts';

export interface ProjectionResults {
  readonly reached?: number | Result;
  readonly left?: number | Result;
  readonly again?: number | undefined;
  readonly remark?: string;
}

/** What every projection along the distance gives; printed in the unit of its `distances`. */
export const projectionOutputs = {
  reached: result('d_L', 'limit reached at', kilometre, 0, 'distances'),
  left: result('', 'left from the last reading', kilometre, 0, 'distances'),
  again: result('', 'measure again at', kilometre, 0, 'distances'),
  remark: saying('remark'),
};

/** `last` is the distance of the last reading, in the unit of the projection. */
export function projectionResults(found: Projection, last: number): ProjectionResults {
  if (found.kind === 'past') return { remark: found.because };
  if (found.kind === 'measure again') return { again: found.at, remark: 'measure again: ' + found.because };
  const { middle, earliest, latest } = found;
  if (latest === undefined) {
    const remark = 'the scatter is too large to say when at the latest';
    return { reached: middle, left: middle - last, remark };
  }
  const narrow = latest - earliest < 1e-9;
  const span = (from: number): number | Result =>
    narrow ? middle - from : { value: middle - from, low: earliest - from, high: latest - from };
  return { reached: span(0), left: span(last) };
}
