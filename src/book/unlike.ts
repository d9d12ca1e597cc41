// Conditions that speak against each other: a limit for a cold engine says nothing of a hot reading.
import { hasWords, remembered } from './names.ts';

const opposites: readonly (readonly [string, string])[] = [
  ['cold', 'hot'],
  ['cold', 'warm'],
  ['dry', 'oiled'],
  ['assembled', 'free'],
];

/** The words of the two that oppose each other, each said by one list only. */
function oppose(wanted: readonly string[], had: readonly string[]): boolean {
  const says = (list: readonly string[], word: string): boolean => list.some((one) => hasWords(one, word));
  return opposites.some(([a, b]) => (says(wanted, a) && says(had, b)) || (says(wanted, b) && says(had, a)));
}

/** Asks again and again of one limit: the same few conditions come in all its readings. */
export function unlikeTo(wanted: readonly string[]): (had: readonly string[]) => boolean {
  if (wanted.length === 0) return () => false;
  const judged = remembered((had) => oppose(wanted, had.split('\n')));
  return (had) => had.length > 0 && judged(had.join('\n'));
}
