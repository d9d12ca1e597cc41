// Edges of the order of work by one of their ends.
import type { OrderEdge } from './content-model.ts';

/** From each step to the edges that begin (`before`) or end (`after`) at it, in the order given. */
export function edgesBy(
  end: 'before' | 'after',
  edges: readonly OrderEdge[],
): ReadonlyMap<string, readonly OrderEdge[]> {
  const found = new Map<string, OrderEdge[]>();
  for (const edge of edges) {
    const list = found.get(edge[end]);
    if (list === undefined) found.set(edge[end], [edge]);
    else list.push(edge);
  }
  return found;
}
