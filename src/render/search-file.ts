// The file of the search: everything that can be found, as a classic script, since a page opened from a folder may fetch nothing.
import type { SearchEntry } from '../compose/search-entries.ts';
import { withVisibleSigns } from './visible-signs.ts';

/** Where it lies below the output folder. */
export const searchIndexFile = 'assets/search-index.js';

type Pair = { readonly uk: string; readonly us: string };

/** The text of the file: the same binder gives the same text, a line for each thing. */
export function searchFileText(entries: readonly SearchEntry[], words: readonly Pair[]): string {
  const kinds = [...new Set(entries.map(({ kind }) => kind))];
  const numbers = new Map(kinds.map((kind, index) => [kind, index]));
  const lines = entries.map(({ kind, title, file, words: further }) =>
    JSON.stringify([numbers.get(kind) ?? 0, withVisibleSigns(title), file, withVisibleSigns(further())]),
  );
  const pairs = words.map(({ uk, us }) => [uk, us]);
  const data = `{"kinds":${JSON.stringify(kinds)},\n"words":${JSON.stringify(pairs)},\n"entries":[\n${lines.join(',\n')}\n]}`;
  return `window.splitpinSearch = ${insideScript(data)};\n`;
}

/** JSON that stays what it is inside any script: no end tag, no line ends that only scripts know. */
export function insideScript(json: string): string {
  return json.replaceAll(/[<\u2028\u2029]/gu, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`);
}
