// A name that must lead to something: the problem when it does not, with the nearest names.
import type { Place, Problem } from '../problem/problem.ts';
import { nearest } from './nearest.ts';

/** The problem of a name that leads nowhere. `what` is for the sentence: `fastener`, `job record`. */
export function unknownReference(word: string, at: Place, what: string, names: Iterable<string>): Problem {
  const all = [...names];
  const near = [...new Set([...nearest(word, all), ...longer(word, all), ...sharing(word, all)])].slice(0, mostNear);
  const named = near.map((name) => `“${name}”`).join(' or ');
  const list = all.slice(0, 6).join(', ');
  const others = list === '' ? `There is no ${what} on record.` : `Known: ${list}${all.length > 6 ? ' …' : '.'}`;
  return {
    code: 'reference-unknown',
    severity: 'problem',
    at,
    message: `There is no ${what} “${word}”.`,
    hint: near.length > 0 ? `Did you mean ${named}?` : others,
  };
}

/** So many are asked about; a list longer than this is no help. */
const mostNear = 8;

/** Names that have a part of four letters or more in common with an id, which somebody wrote from memory. */
function sharing(word: string, names: readonly string[]): readonly string[] {
  const parts = word.split('-').filter((part) => part.length >= 4);
  return parts.length === 0 ? [] : names.filter((name) => name.split('-').some((part) => parts.includes(part)));
}

/** Names of which the word is a part: somebody wrote the short form. */
function longer(word: string, names: readonly string[]): readonly string[] {
  return word.length < 4 ? [] : names.filter((name) => name.length > word.length + 3 && name.includes(word));
}

/** Names that are known, and whether a word that is none of them is the owner's own. */
export interface Names {
  readonly all: ReadonlySet<string>;
  readonly isOwn: (word: string) => boolean;
}

/**
 * Parts with hyphens between are always meant as an id; anything of five letters and more that is one slip from a known
 * name (`Gearbox oil`, `gearbox-oill`) is meant to be it; all else is the owner's own words. The same words come in
 * thousands of records, so each is judged once.
 */
export function namesOf(list: readonly { readonly id: string }[]): Names {
  const all = new Set(list.map(({ id }) => id));
  const judged = new Map<string, boolean>();
  const judge = (word: string): boolean => {
    if (/^[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)+$/u.test(word)) return false;
    return word.length < 5 || nearest(word, all, 1).length === 0;
  };
  const isOwn = (word: string): boolean => {
    const known = judged.get(word) ?? judge(word);
    judged.set(word, known);
    return known;
  };
  return { all, isOwn };
}

/** A place further down. */
export function below(at: Place, ...steps: readonly (string | number)[]): Place {
  return { ...at, path: [...at.path, ...steps] };
}
