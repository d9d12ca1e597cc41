// Part numbers that took the place of others: none takes its own place, however long the way round.
import type { Problem } from '../problem/problem.ts';
import { ringIn } from './check-order.ts';
import type { OrderEdge } from './content-model.ts';
import type { Job, Records } from './model.ts';
import { below } from './reference.ts';
import { keptFlat } from './runs.ts';

const edgesOf = keptFlat(({ parts }: Job) =>
  parts.flatMap(({ number, bookNumber, supersedes, at }): readonly OrderEdge[] => {
    const own = number ?? bookNumber;
    if (own === undefined || supersedes === undefined) return [];
    return [{ before: supersedes, after: own, why: '', at: below(at, 'supersedes') }];
  }),
);

/** One ring of numbers, if there is any; the line that closes it is pointed at. */
export function checkNumbers({ jobs }: Records): readonly Problem[] {
  const edges = edgesOf(jobs);
  const ring = edges.length === 0 ? undefined : ringIn(edges);
  const last = ring?.at(-1);
  if (ring === undefined || last === undefined) return [];
  const names = [...ring.map(({ before }) => before), last.after].join(' → ');
  return [
    {
      code: 'number-in-a-ring',
      severity: 'problem',
      at: last.at,
      message: `${names}: a part number would have taken its own place.`,
      hint: 'The older number stands under `supersedes`, the newer one under `number`.',
      also: ring
        .slice(0, -1)
        .map(({ before, after, at }) => ({ at, message: `${after} takes the place of ${before} here.` })),
    },
  ];
}
