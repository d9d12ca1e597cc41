// The data of a record before anything is understood: every scalar is still the text that somebody wrote.

/** `null` is a key with nothing after it. */
export type Tree = string | null | readonly Tree[] | Branch;

/** Keys and their values, in the order of the file. */
export interface Branch {
  readonly [key: string]: Tree;
}

/** True for a map of keys. */
export function isBranch(tree: Tree | undefined): tree is Branch {
  return typeof tree === 'object' && tree !== null && !Array.isArray(tree);
}

/** True for a list. */
export function isList(tree: Tree | undefined): tree is readonly Tree[] {
  return Array.isArray(tree);
}

/** Whether a parser's answer is a tree all the way down; anything else would be a bug of the parser's settings. */
export function isTree(value: unknown): value is Tree {
  if (typeof value === 'string' || value === null) return true;
  if (Array.isArray(value)) return value.every(isTree);
  if (typeof value !== 'object') return false;
  return Object.values(value).every(isTree);
}
