// Records that wait for other records: each one named exists, and none waits for itself, however long the way round.
import type { Problem } from '../problem/problem.ts';
import type { OrderEdge } from './content-model.ts';
import { ringIn } from './check-order.ts';
import type { Job, Records } from './model.ts';
import { unknownReference } from './reference.ts';
import { keptFlat } from './runs.ts';
import { unreadIds } from './unread-ids.ts';

/** Names under `after` that lead to no record, and one ring, if there is one. */
export function checkAfter(records: Records): readonly Problem[] {
  const edges = edgesOf(records.jobs);
  if (edges.length === 0) return [];
  const known = new Set([...records.jobs.map(({ id }) => id), ...unreadIds(records)]);
  const lost = edges
    .filter(({ before }) => !known.has(before))
    .map(({ before, at }) => unknownReference(before, at, 'job record', known));
  const ring = ringIn(edges);
  return ring === undefined ? lost : [...lost, ringOfJobs(ring)];
}

const edgesOf = keptFlat(({ id, file, after = [] }: Job) =>
  after.map((before, index): OrderEdge => ({ before, after: id, why: '', at: { file, path: ['after', index] } })),
);

function ringOfJobs(ring: readonly OrderEdge[]): Problem {
  const last = ring.at(-1);
  const names = [...ring.map(({ before }) => before), last?.after ?? ''].join(' → ');
  return {
    code: 'order-in-a-ring',
    severity: 'problem',
    at: last?.at ?? { file: '', path: [] },
    message: `${names}: it would have to come before itself.`,
    hint: 'Take one of them out of `after`.',
    also: ring.slice(0, -1).map(({ before, after, at }) => ({ at, message: `${after} waits for ${before} here.` })),
  };
}
