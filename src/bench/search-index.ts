// Finding: the words of what is typed, whole, begun or misspelt, in both dialects; the best first.
import MiniSearch from 'minisearch';
import type { Entry, SearchData } from './search-data.ts';
import { inBothDialects, wordsIn, wordsOfQuery } from './search-words.ts';

export interface Found {
  readonly kind: string;
  readonly title: string;
  readonly file: string;
  readonly words: string;
}

export type Find = (text: string) => readonly Found[];

interface Row {
  readonly id: number;
  readonly title: string;
  readonly words: string;
}

/** Makes what finds. The index is made here and not carried: it would be some times as large as what it indexes. */
export function finder(data: SearchData): Find {
  const index = new MiniSearch<Row>({
    fields: ['title', 'words'],
    tokenize: (text) => [...wordsIn(text)],
    processTerm: (term) => term,
  });
  index.addAll(data.entries.map(([, title, , words], id): Row => ({ id, title, words })));
  return (text) => {
    const scores = new Map<number, number>();
    for (const query of inBothDialects(text, data.words)) {
      for (const { id, score } of resultsOf(index, query)) scores.set(id, Math.max(scores.get(id) ?? 0, score));
    }
    // Of two that fit as well, the one that stands first in the binder.
    const best = [...scores].sort(([a, scoreA], [b, scoreB]) => scoreB - scoreA || a - b);
    return best.flatMap(([id]) => foundOf(data, data.entries[id]));
  };
}

/** All words have to be there; only where nothing has them all, some. */
function resultsOf(index: MiniSearch<Row>, query: string): readonly { readonly id: number; readonly score: number }[] {
  const options = {
    prefix: true,
    // A number is right or wrong; a word may be misspelt by a letter in four.
    fuzzy: (term: string) => (/\d/u.test(term) || term.length < 4 ? false : 0.25),
    boost: { title: 6 },
    tokenize: (text: string) => [...wordsOfQuery(text)],
    weights: { fuzzy: 0.3, prefix: 0.6 },
  } as const;
  const all = index.search(query, { ...options, combineWith: 'AND' });
  const results = all.length > 0 ? all : index.search(query, { ...options, combineWith: 'OR' });
  return results.map(({ id, score }) => ({ id: Number(id), score }));
}

function foundOf({ kinds }: SearchData, entry: Entry | undefined): readonly Found[] {
  if (entry === undefined) return [];
  const [kind, title, file, words] = entry;
  return [{ kind: kinds[kind] ?? '', title, file, words }];
}
