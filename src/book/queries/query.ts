// A query: something an experienced reader would point at. It never stops a build; a person looks and decides.
import type { Place, Problem } from '../../problem/problem.ts';
import type { ProblemCode } from '../../problem/codes.ts';
import type { Costs, DueLine, TorqueRow } from '../book.ts';
import type { Ground } from '../ground.ts';
import type { HoldWork } from '../holds.ts';
import type { OdometerWork } from '../odometer.ts';
import type { OffWork } from '../off-and-on.ts';
import type { SeriesWork } from '../series.ts';

/** Everything worked out so far; a query only looks. */
export interface Found {
  readonly ground: Ground;
  readonly odometer: OdometerWork;
  readonly offWork: OffWork;
  readonly series: SeriesWork;
  readonly torque: readonly TorqueRow[];
  readonly holds: HoldWork;
  readonly due: readonly DueLine[];
  /** Added up when it is asked for: only an owner's limit asks. */
  readonly costs: () => Costs;
}

/** One small look over the book. */
export type Look = (found: Found) => readonly Problem[];

/** Makes a query; `hint` says what would answer it. */
export function query(code: ProblemCode, at: Place, message: string, hint?: string): Problem {
  return hint === undefined ? { code, severity: 'query', at, message } : { code, severity: 'query', at, message, hint };
}
