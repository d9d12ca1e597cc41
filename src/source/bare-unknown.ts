// A bare `?` as a value says “not known”. YAML takes it for a rare kind of key, so it stands in for one character while it is parsed.
import { isList, type Tree } from './tree.ts';

/** A private character of the same length, so that columns stay. */
const mark = '\uE03F';
const bare = /(?<=[:,-][ \t]+|\[[ \t]*)\?(?=[ \t]*(?:$|[,\]}]|[ \t]#))/gmu;

/** Text in which every bare `?` is a character that parsers take for text. */
export function markUnknown(text: string): string {
  return text.includes('?') ? text.replaceAll(bare, mark) : text;
}

/** The tree with the question marks back. */
export function unmarkUnknown(tree: Tree): Tree {
  if (typeof tree === 'string') return tree.replaceAll(mark, '?');
  if (tree === null) return tree;
  if (isList(tree)) return tree.map(unmarkUnknown);
  return Object.fromEntries(Object.entries(tree).map(([key, value]) => [key, unmarkUnknown(value)]));
}
