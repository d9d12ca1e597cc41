// A value that stands there in the wrong form, put into the right one: so that a hint can be taken as it stands.
import type { Tree } from '../../source/tree.ts';
import type { Told } from './shape.ts';

/** In quotes where it would be taken for something else inside brackets. */
function quoted(words: string): string {
  return /^[^\s"'[\]{},#&*!|>%@`?:-][^"[\]{},#:]*$/u.test(words) ? words : JSON.stringify(words);
}

/** `x.jpg` as words, `{file: x.jpg}` as keys, `[{file: x.jpg}]` as a list; undefined where nobody can tell from the value what was meant. */
export function proposed(told: Told, tree: Tree): string | undefined {
  if (typeof tree !== 'string' || tree.length > longest) return undefined;
  if (told.kind === 'text') return told.written === 'words' || isId(told.written, tree) ? quoted(tree) : undefined;
  if (told.kind === 'choice') return told.words.includes(tree) ? tree : undefined;
  if (told.kind === 'either') return told.of.map((one) => proposed(one, tree)).find((one) => one !== undefined);
  if (told.kind === 'list') {
    const inside = proposed(told.of, tree);
    return inside === undefined ? undefined : `[${inside}]`;
  }
  if (told.kind !== 'record') return undefined;
  const first = told.fields.find(({ needed }) => needed);
  // A figure is an amount or a size, and which key it was meant for nobody can tell.
  const value = first === undefined || /^[\d.,+-]/u.test(tree) ? undefined : proposed(first.value, tree);
  return value === undefined ? undefined : `{${first?.key ?? ''}: ${value}}`;
}

/** Longer words are a story, and belong under `remarks`. */
const longest = 80;

function isId(written: string, value: string): boolean {
  return written.startsWith('an id') && /^[\p{L}\p{N}]+(?:[.-][\p{L}\p{N}]+)*$/u.test(value);
}
