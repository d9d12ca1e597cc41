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

/** Letters on each side where two words were written as one. */
const leastPart = 3;

/** All words have to be there; where nothing has them all, with two of them that were written as one; then some. */
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
  const parted = all.length > 0 ? all : inParts(index, query);
  const results = parted.length > 0 ? parted : index.search(query, { ...options, combineWith: 'OR' });
  return results.map(({ id, score }) => ({ id: Number(id), score }));
}

/** `sparkplug` as spark and plug: the first way to part a word at which something has all of the words, begun or whole. */
function inParts(index: MiniSearch<Row>, query: string): ReturnType<MiniSearch<Row>['search']> {
  const words = wordsOfQuery(query);
  const tokenize = (text: string): string[] => text.split(' ');
  for (const [place, word] of words.entries()) {
    if (!/^\p{L}+$/u.test(word)) continue;
    for (let at = leastPart; at <= word.length - leastPart; at += 1) {
      const parted = words.with(place, `${word.slice(0, at)} ${word.slice(at)}`).join(' ');
      const found = index.search(parted, { prefix: true, combineWith: 'AND', boost: { title: 6 }, tokenize });
      if (found.length > 0) return found;
    }
  }
  return [];
}

function foundOf({ kinds }: SearchData, entry: Entry | undefined): readonly Found[] {
  if (entry === undefined) return [];
  const [kind, title, file, words] = entry;
  return [{ kind: kinds[kind] ?? '', title, file, words }];
}
