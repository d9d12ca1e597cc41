// A shape says how one value is read from the tree, and describes itself, so that manual and JSON Schema come from the same line.
// Why not a schema library here: a record must keep the place of each entry, know `?` and `private` everywhere, and be
// read in some 30 µs; zod makes the JSON Schema from the same descriptions (see schema.ts).
import type { Branch, Tree } from '../../source/tree.ts';
import { isBranch } from '../../source/tree.ts';
import { placeOf, refuse, type Desk, type Spot } from './desk.ts';

/** What a shape says of itself. */
export type Told =
  | { readonly kind: 'text'; readonly written: string; readonly example?: string }
  | { readonly kind: 'choice'; readonly words: readonly string[] }
  | { readonly kind: 'list'; readonly of: Told }
  | { readonly kind: 'map'; readonly of: Told; readonly keys: string }
  | { readonly kind: 'either'; readonly of: readonly Told[] }
  | { readonly kind: 'record'; readonly fields: readonly ToldField[] };

export interface ToldField {
  readonly key: string;
  readonly needed: boolean;
  readonly says: string;
  readonly example?: string;
  readonly value: Told;
}

export interface Shape<T> {
  /** Gives the value, or `undefined`: then a problem is on the desk, or the value is not known (`?`, `none`). */
  readonly read: (tree: Tree, spot: Spot | undefined, desk: Desk) => T | undefined;
  readonly told: Told;
  /** The shape has its own meaning for `?`; others take it as “not known”. */
  readonly takesUnknown?: true;
}

/** In a copy for a next owner these stand where the value was: there is nothing left to keep. */
const nothing: ReadonlySet<unknown> = new Set(['?', 'none']);

/** Reads a value inside another one, looking through `{value: …, private: yes}`. */
export function readInside<T>(shape: Shape<T>, tree: Tree, spot: Spot, desk: Desk): T | undefined {
  if (!isBranch(tree) || !isKept(tree)) return shape.read(tree, spot, desk);
  const inner = { up: spot, key: 'value' };
  if (tree['private'] === 'yes' && !nothing.has(tree['value'])) desk.kept.push(placeOf(desk, inner));
  else if (tree['private'] !== 'yes' && tree['private'] !== 'no') {
    refuse(desk, { up: spot, key: 'private' }, 'word-unknown', 'Private is yes or no.', 'Write `private: yes`.');
  }
  return shape.read(tree['value'] ?? null, inner, desk);
}

/** What stands in `{value: …, private: yes}`, or the tree itself. */
export function lookedThrough(tree: Tree): Tree {
  return isBranch(tree) && isKept(tree) ? (tree['value'] ?? null) : tree;
}

function isKept(tree: Branch): boolean {
  return 'private' in tree && 'value' in tree && Object.keys(tree).length === 2;
}

/** A further step after reading, with the place still at hand. */
export function andThen<A, B>(
  shape: Shape<A>,
  step: (value: A, spot: Spot | undefined, desk: Desk) => B | undefined,
): Shape<B> {
  return {
    read: (tree, spot, desk) => {
      const value = shape.read(tree, spot, desk);
      return value === undefined ? undefined : step(value, spot, desk);
    },
    told: shape.told,
  };
}
