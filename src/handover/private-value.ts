// A value that stays with the owner, and how it is looked for: without regard to capitals, spaces and how a number is grouped.
import type { Place } from '../problem/problem.ts';

export interface PrivateValue {
  /** What it is, in words: `a name`, `the key number`. */
  readonly what: string;
  /** As it was written. */
  readonly text: string;
  /** Where it was met first. */
  readonly at: Place;
  /** What stands in its place; without it the mark. A hand stays a hand, so that two people stay two. */
  readonly instead?: string;
}

/** Stands where a private word stood in other words. It upsets neither YAML nor Markdown. */
export const leftOutMark = '(left out)';

/** Scripts that are written without spaces between words. */
const unspaced = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}]/u;

/** One bare word of letters: a name such as Mark, that may be a word of the language as well. */
export function isBareWord(text: string): boolean {
  return /^[\p{L}\p{M}'’-]+$/u.test(text) && !unspaced.test(text);
}

/**
 * Finds a value in any text, or nothing when it holds neither letter nor digit. A bare word is found as it is written and in capitals
 * (`anyCase` finds it in small letters too, for names of files); anything else whatever its capitals, spaces and hyphens.
 */
export function patternOf(value: string, anyCase = false): RegExp | undefined {
  const text = value.normalize('NFC').trim();
  const runs = text.match(/\p{N}+|[\p{L}\p{M}]+/gu) ?? [];
  if (runs.length === 0) return undefined;
  const open = unspaced.test(text);
  const before = open ? '' : String.raw`(?<![\p{L}\p{M}\p{N}])`;
  const after = open ? '' : String.raw`(?![\p{L}\p{M}\p{N}])`;
  const digits = text.replaceAll(/\P{N}/gu, '');
  // A telephone number is the same however its digits are grouped.
  if (digits.length >= 7 && /^[\p{N}\s()+./-]+$/u.test(text))
    return new RegExp(`${before}${Array.from(digits).join(String.raw`[\s()./-]{0,3}`)}${after}`, 'gu');
  if (isBareWord(text) && runs.length === 1 && !anyCase)
    return new RegExp(`${before}(?:${text}|${text.toUpperCase()})${after}`, 'gu');
  const parted = /[^\p{L}\p{M}\p{N}]/u.test(text) ? String.raw`[^\p{L}\p{N}]{0,4}` : String.raw`[\s-]{0,2}`;
  return new RegExp(`${before}${runs.join(parted)}${after}`, 'giu');
}
