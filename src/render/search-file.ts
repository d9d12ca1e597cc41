// The file of the search: everything that can be found, as a classic script, since a page opened from a folder may fetch nothing.
import type { SearchEntry } from '../compose/search-entries.ts';

/** Where it lies below the output folder. */
export const searchIndexFile = 'assets/search-index.js';

type Pair = { readonly uk: string; readonly us: string };

/** The text of the file: the same binder gives the same text. */
export function searchFileText(entries: readonly SearchEntry[], words: readonly Pair[]): string {
  const kinds = [...new Set(entries.map(({ kind }) => kind))];
  const numbers = new Map(kinds.map((kind, index) => [kind, index]));
  const lines = entries.map(({ kind, title, file, words: further }) =>
    scriptText([numbers.get(kind) ?? 0, title, file, further()]),
  );
  const pairs = words.map(({ uk, us }) => [uk, us]);
  return `window.splitpinSearch = {"kinds":${scriptText(kinds)},\n"words":${scriptText(pairs)},\n"entries":[\n${lines.join(',\n')}\n]};\n`;
}

/** JSON that stays what it is inside any script: no end tag, no line ends that only scripts know, no sign that turns the writing round. */
function scriptText(value: unknown): string {
  return JSON.stringify(value).replaceAll(
    /[<\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
