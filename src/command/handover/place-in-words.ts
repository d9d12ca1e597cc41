// Where a private value stands, as its owner would look for it: the file, the key, the entry of a list.
import type { Place } from '../../problem/problem.ts';

/** `parts, entry 2, moved from`; empty for a file as a whole. Entries are counted from one. */
export function keyInWords({ path }: Place): string {
  return path.map((step) => (typeof step === 'number' ? `entry ${String(step + 1)}` : step)).join(', ');
}

/** `jobs/2024-05-09-seat.md: parts, entry 2, moved from`. */
export function placeInWords(at: Place): string {
  return at.path.length === 0 ? at.file : `${at.file}: ${keyInWords(at)}`;
}
