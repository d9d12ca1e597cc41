// Every look over the book, ordered by what can hurt: first the person, then the machine, then the paper.
import type { Problem } from '../../problem/problem.ts';
import type { Found, Look } from './query.ts';

const looks: readonly Look[] = [];

/** All queries, in the order of the list and inside it in the order of the records. */
export function lookOver(found: Found): readonly Problem[] {
  return looks.flatMap((look) => look(found));
}
