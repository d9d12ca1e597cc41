// The order of work against itself: every step that an edge names exists, and no step has to come before itself.
import type { Problem } from '../problem/problem.ts';
import type { OrderEdge, OrderOfWork } from './content-model.ts';
import { edgesBy } from './order-edges.ts';
import { below, unknownReference } from './reference.ts';

/** Edges that lead to no step, and one ring, if there are any. */
export function checkOrder(orders: readonly OrderOfWork[]): readonly Problem[] {
  const steps = new Set(orders.flatMap((order) => order.steps.map((step) => step.id)));
  const edges = orders.flatMap((order) => order.edges);
  const unknown = edges.flatMap((edge) =>
    (['before', 'after'] as const)
      .filter((end) => !steps.has(edge[end]))
      .map((end) => unknownReference(edge[end], below(edge.at, end), 'step of the order', steps)),
  );
  const ring = ringIn(edges);
  return ring === undefined ? unknown : [...unknown, ringProblem(ring)];
}

/** The edges of a ring in their order; undefined when there is none. Walks without calling itself: an order may be long. */
export function ringIn(edges: readonly OrderEdge[]): readonly OrderEdge[] | undefined {
  const from = edgesBy('before', edges);
  const done = new Set<string>();
  for (const start of from.keys()) {
    const way: { readonly edge?: OrderEdge; readonly step: string; next: number }[] = [{ step: start, next: 0 }];
    for (let here = way.at(-1); here !== undefined; here = way.at(-1)) {
      const edge = done.has(here.step) ? undefined : from.get(here.step)?.[here.next];
      here.next += 1;
      if (edge === undefined) {
        done.add(here.step);
        way.pop();
        continue;
      }
      const back = way.findIndex(({ step }) => step === edge.after);
      if (back >= 0) return closedLast([...way.slice(back + 1).flatMap((one) => one.edge ?? []), edge], edges);
      way.push({ edge, step: edge.after, next: 0 });
    }
  }
  return undefined;
}

/** The ring turned so that the edge that was written last closes it: that is the one to look at. */
function closedLast(ring: readonly OrderEdge[], edges: readonly OrderEdge[]): readonly OrderEdge[] {
  const order = new Map(edges.map((edge, index) => [edge, index]));
  const places = ring.map((edge) => order.get(edge) ?? 0);
  const last = places.indexOf(Math.max(...places));
  return [...ring.slice(last + 1), ...ring.slice(0, last + 1)];
}

export function ringProblem(ring: readonly OrderEdge[]): Problem {
  const last = ring.at(-1);
  const names = [...ring.map((edge) => edge.before), last?.after ?? ''].join(' → ');
  return {
    code: 'order-in-a-ring',
    severity: 'problem',
    at: last === undefined ? { file: '', path: [] } : below(last.at, 'after'),
    message: `${names}: it would have to come before itself.`,
    hint: 'Take away the edge that is not so.',
    also: ring
      .slice(0, -1)
      .map((edge) => ({ at: edge.at, message: `${edge.before} comes before ${edge.after} here.` })),
  };
}
