// The problem of a machine's own content that takes away or softens what holds for every machine.
import type { Place, Problem } from '../../problem/problem.ts';
import { below } from '../reference.ts';

/** `what` is what would be softened, as in “the reason of …”. */
export function weakened(at: Place, key: string, what: string, hint: string): Problem {
  return {
    code: 'content-weakened',
    severity: 'problem',
    at: below(at, key),
    message: `A machine may add to what holds for every machine, and not change it: this is ${what}.`,
    hint,
  };
}
