// Readings: an item, its values by position as found and as left. A reading without values is a blank to be filled in.
import type { Dimension } from '../../quantity/quantity.ts';
import { isBranch, type Tree } from '../../source/tree.ts';
import type { Reading, ReadingValue } from '../model.ts';
import { cutAtComma } from '../shapes/cut-at-comma.ts';
import { placeOf, type Desk, type Spot } from '../shapes/desk.ts';
import { entry, may, need, or } from '../shapes/fields.ts';
import { readValue } from '../shapes/measured.ts';
import { commaWords, scalar, text } from '../shapes/plain.ts';
import { readInside, andThen, type Shape } from '../shapes/shape.ts';

/** Values not read yet: what kind of quantity they must be is known only with the item. */
interface Unread {
  readonly position: string;
  readonly words: string;
  readonly spot: Spot | undefined;
}

const words: Shape<string> = {
  read: (tree, spot, desk) => (tree === null ? '' : scalar(tree, spot, desk)),
  told: { kind: 'text', written: 'a value with its unit, `?`, or words', example: '0.50 mm' },
  takesUnknown: true,
};

/** One value, or one for each position. */
const values: Shape<readonly Unread[]> = {
  read: (tree: Tree, spot, desk) => {
    if (!isBranch(tree)) {
      const one = words.read(tree, spot, desk);
      return one === undefined ? undefined : [{ position: '', words: one, spot }];
    }
    const cut = cutAtComma(tree, spot, desk);
    return Object.keys(tree).flatMap((key) => {
      if (cut.has(key)) return [];
      const here = { up: spot, key };
      const one = readInside(words, tree[key] ?? null, here, desk);
      return one === undefined ? [] : [{ position: key, words: one, spot: here }];
    });
  },
  told: { kind: 'either', of: [words.told, { kind: 'map', of: words.told, keys: 'positions' }] },
  takesUnknown: true,
};

export const reading: Shape<Reading> = andThen(
  entry({
    item: need(text, 'what was measured: the id of a limit or setting, or a name of your own', { example: 'bore' }),
    found: or(values, [], 'the value as found, or one for each position', {
      example: '{left: 6.8 bar, right: 6.4 bar}',
    }),
    left: or(values, [], 'the value as left'),
    condition: or(commaWords, [], 'how it was when measured', { example: 'cold, dry' }),
    instrument: may(text, 'id of the instrument', { example: 'bore-gauge' }),
    by: may(text, 'who read it, where more than one did'),
    note: may(text, 'your own words'),
  }),
  (line, _spot, desk) => {
    const before = desk.problems.length;
    const dimension = desk.dimensionOf(line.item);
    const found = readAll(line.found, dimension, desk);
    const left = readAll(line.left, dimension, desk);
    return desk.problems.length > before ? undefined : { ...line, found, left };
  },
);

function readAll(unread: readonly Unread[], dimension: Dimension | undefined, desk: Desk): readonly ReadingValue[] {
  // Most have one value; a list that grew would keep room for sixteen more.
  const [only] = unread;
  if (unread.length === 1 && only !== undefined) return readOne(only, dimension, desk);
  return unread.flatMap((one) => readOne(one, dimension, desk)).slice();
}

function readOne(
  { position, words: written, spot }: Unread,
  dimension: Dimension | undefined,
  desk: Desk,
): readonly ReadingValue[] {
  const value = readValue(written, dimension, spot, desk);
  return value === undefined ? [] : [{ position, value, at: placeOf(desk, spot) }];
}
