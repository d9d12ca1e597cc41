// What can be found, as the file beside the pages gives it: things, the words that lead to them, where they stand.

/** Kind (its place in `kinds`), title, file with its fragment, further words. */
export type Entry = readonly [kind: number, title: string, file: string, words: string];

export interface SearchData {
  readonly kinds: readonly string[];
  readonly entries: readonly Entry[];
  /** Words of both dialects that mean the same. */
  readonly words: readonly (readonly [string, string])[];
}

declare global {
  interface Window {
    splitpinSearch?: unknown;
  }
}

/** What the index file put into the window; undefined when it is not there, or not what it should be. */
export function readSearchData(value: unknown): SearchData | undefined {
  return isSearchData(value) ? value : undefined;
}

function isSearchData(value: unknown): value is SearchData {
  return (
    typeof value === 'object' &&
    value !== null &&
    'kinds' in value &&
    Array.isArray(value.kinds) &&
    'entries' in value &&
    Array.isArray(value.entries) &&
    'words' in value &&
    Array.isArray(value.words)
  );
}
