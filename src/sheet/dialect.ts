// Our own words in the dialect of the print: written in British words, turned word by word where the machine asks for American ones.

export type Say = (words: string) => string;

/** A British word and what is said for it in American. */
export interface WordPair {
  readonly uk: string;
  readonly us: string;
}

/** As the owner writes it: `Tyre` gives `Tire`, `TYRE` gives `TIRE`. */
function likeCase(model: string, word: string): string {
  if (model === model.toUpperCase() && model.length > 1) return word.toUpperCase();
  const first = model.charAt(0);
  return first === first.toUpperCase() ? word.charAt(0).toUpperCase() + word.slice(1) : word;
}

function escaped(word: string): string {
  return word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/**
 * The speaker of one dialect. British words stand as they are. For American ones every word of the list is replaced where
 * it stands alone, the longer pair first, so that `silencer baffle` is not taken apart. Results are kept: our words are few.
 */
export function speaker(words: readonly WordPair[], spelling: 'uk' | 'us'): Say {
  if (spelling === 'uk' || words.length === 0) return (text) => text;
  const american = new Map(words.map((pair) => [pair.uk.toLowerCase(), pair.us]));
  const longestFirst = [...american.keys()].toSorted((one, other) => other.length - one.length);
  const any = new RegExp(`(?<![\\p{L}\\p{N}])(?:${longestFirst.map(escaped).join('|')})(?![\\p{L}\\p{N}])`, 'giu');
  const said = new Map<string, string>();
  return (text) => {
    const before = said.get(text);
    if (before !== undefined) return before;
    const turned = text.replace(any, (word) => likeCase(word, american.get(word.toLowerCase()) ?? word));
    said.set(text, turned);
    return turned;
  };
}
