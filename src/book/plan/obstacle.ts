// What stands in the way of a job tonight: each kind of thing with a key of its own, so that what frees most can be counted.
import type { HoldPoint, OrderStep } from '../../records/content-model.ts';
import type { Job } from '../../records/model.ts';
import type { OpenLine } from '../book.ts';
import type { PartLine } from '../shopping/part-lines.ts';
import type { BackOn } from './back-on-first.ts';

export type Obstacle =
  | {
      readonly kind: 'step';
      readonly step: OrderStep;
      readonly jobs: readonly Job[];
      readonly why: string;
      /** Off, and to be on before the step can be done. */
      readonly notOn?: OpenLine;
    }
  | BackOn
  | { readonly kind: 'job'; readonly job: Job }
  | { readonly kind: 'hold'; readonly point: HoldPoint; readonly open: number; readonly first: string }
  | { readonly kind: 'part'; readonly line: PartLine }
  | { readonly kind: 'away'; readonly line: OpenLine }
  | { readonly kind: 'waiting'; readonly of: string }
  | { readonly kind: 'helper'; readonly why: string }
  | { readonly kind: 'time'; readonly minutes?: number };

/** The same for two jobs that wait for the same thing. */
export function obstacleKey(one: Obstacle): string {
  if (one.kind === 'step') return `step ${one.step.id}`;
  if (one.kind === 'job') return `job ${one.job.id}`;
  if (one.kind === 'hold') return `hold ${one.point.id}`;
  if (one.kind === 'part') return `part ${one.line.key}`;
  if (one.kind === 'not on') return `on ${one.line.entry.thing}`;
  if (one.kind === 'away') return `away ${one.line.entry.thing}`;
  if (one.kind === 'waiting') return `waiting ${one.of.toLowerCase()}`;
  return one.kind === 'time' && one.minutes === undefined ? 'time not known' : one.kind;
}
