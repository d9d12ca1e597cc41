// Shapes without a unit: words, choices, whole numbers, lists, and maps with keys of the owner's own.
import { readNumber } from '../../quantity/read-number.ts';
import { isBranch, isList, type Tree } from '../../source/tree.ts';
import { nearest } from '../nearest.ts';
import { refuse, type Desk, type Spot } from './desk.ts';
import { proposed } from './proposed.ts';
import { readInside, type Shape } from './shape.ts';

/** Most characters of one value: half a page. What is longer belongs in the body, and a stranger's could keep a reader busy for hours. */
const longest = 2000;

/** The text of a scalar, or a problem. An empty value is told by the field that needs it. */
export function scalar(tree: Tree, spot: Spot | undefined, desk: Desk): string | undefined {
  if (typeof tree === 'string' && tree.length > longest) return tooLong(spot, desk);
  if (typeof tree === 'string') return tree === '' ? undefined : tree;
  if (tree === null) return undefined;
  const what = isBranch(tree) ? 'a group of keys' : 'a list';
  return refuse(
    desk,
    spot,
    'value-not-text',
    `One value is expected here, not ${what}.`,
    'Write the value after the key; text with : or { or [ in it goes in quotes.',
  );
}

function tooLong(spot: Spot | undefined, desk: Desk): undefined {
  const message = `This value is longer than a value may be (${String(longest)} characters).`;
  return refuse(desk, spot, 'value-too-long', message, 'Say it shortly here, and the rest in the text below the keys.');
}

/** Words of the owner, kept as written. `?` stays as it is. */
export const text: Shape<string> = { read: scalar, told: { kind: 'text', written: 'words' } };

/** Words that may be empty. */
export const anyText: Shape<string> = {
  read: (tree, spot, desk) => (tree === null || tree === '' ? '' : scalar(tree, spot, desk)),
  told: { kind: 'text', written: 'words, or nothing' },
  takesUnknown: true,
};

/** A permanent name for a thing: letters and digits, parted by single hyphens or points; no spaces. */
export const id: Shape<string> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    if (words === undefined || /^[\p{L}\p{N}]+(?:[.-][\p{L}\p{N}]+)*$/u.test(words)) return words;
    const better = words
      .toLowerCase()
      .replaceAll(/[^\p{L}\p{N}.]+/gu, '-')
      .replaceAll(/^[-.]+|[-.]+$/gu, '');
    return refuse(
      desk,
      spot,
      'id-not-plain',
      `“${words}” cannot be an id: ids are letters and digits with hyphens between.`,
      better === '' ? 'Write a short name.' : `Write “${better}”.`,
    );
  },
  told: { kind: 'text', written: 'an id: letters, digits, hyphens' },
};

/** One of a few words. */
export function choice<const W extends string>(...words: readonly W[]): Shape<W> {
  return {
    read: (tree, spot, desk) => {
      const written = scalar(tree, spot, desk);
      if (written === undefined) return undefined;
      const found = words.find((word) => word === written);
      if (found !== undefined) return found;
      const near = nearest(written, words);
      const hint = near.length > 0 ? `Did you mean “${near[0] ?? ''}”?` : `Write one of: ${words.join(', ')}.`;
      return refuse(desk, spot, 'word-unknown', `“${written}” is none of the words that can stand here.`, hint);
    },
    told: { kind: 'choice', words },
  };
}

/** yes or no. */
export const yesNo: Shape<boolean> = {
  read: (tree, spot, desk) => {
    const word = choice('yes', 'no').read(tree, spot, desk);
    return word === undefined ? undefined : word === 'yes';
  },
  told: { kind: 'choice', words: ['yes', 'no'] },
};

/** A plain number without a unit. */
export function number(low: number, high: number, whole: 'whole' | 'any' = 'any'): Shape<number> {
  const kind = whole === 'whole' ? 'a whole number' : 'a number';
  return {
    read: (tree, spot, desk) => {
      const written = scalar(tree, spot, desk);
      if (written === undefined) return undefined;
      const read = readNumber(written);
      if (!read.ok) return refuse(desk, spot, read.why.code, sentence(read.why.message), hintOf(read.why.hint));
      const { value } = read.value;
      const fits = value >= low && value <= high && (whole === 'any' || Number.isInteger(value));
      return fits
        ? value
        : refuse(
            desk,
            spot,
            'number-out-of-range',
            `“${written}” cannot stand here.`,
            `Write ${kind} from ${String(low)} to ${String(high)}, without a unit.`,
          );
    },
    told: { kind: 'text', written: `${kind} from ${String(low)} to ${String(high)}` },
  };
}

/** A list; the word `none` is an empty one. */
export function list<T>(of: Shape<T>): Shape<readonly T[]> {
  return {
    read: (tree, spot, desk) => {
      if (tree === null || tree === 'none') return [];
      if (!isList(tree)) {
        const better = proposed({ kind: 'list', of: of.told }, tree);
        const hint =
          better === undefined
            ? 'Begin each entry with a hyphen, or put it in brackets: [ … ].'
            : `Write ${better}, or one a line with a hyphen before it.`;
        return refuse(desk, spot, 'value-not-list', 'A list is expected here.', hint);
      }
      const items: T[] = [];
      for (let key = 0; key < tree.length; key += 1) {
        const here = { up: spot, key };
        const before = desk.problems.length;
        const value = readInside(of, tree[key] ?? null, here, desk);
        if (value !== undefined) items.push(value);
        else if (desk.problems.length === before)
          refuse(desk, here, 'value-missing', 'This entry of the list is empty.', 'Fill it or take it away.');
      }
      // A list that grew keeps room for sixteen more, and stays as long as the record does; a copy has none.
      return items.slice();
    },
    told: { kind: 'list', of: of.told },
  };
}

/** One value, or a list of them. */
export function oneOrMore<T>(of: Shape<T>): Shape<readonly T[]> {
  const many = list(of);
  return {
    read: (tree, spot, desk) => {
      if (isList(tree)) return many.read(tree, spot, desk);
      const one = of.read(tree, spot, desk);
      return one === undefined ? undefined : [one];
    },
    told: { kind: 'either', of: [of.told, many.told] },
  };
}

/** Keys of the owner's own, each with a value of one shape, in the order of the file. */
export function mapOf<T>(
  of: Shape<T>,
  keys: string,
): Shape<readonly { readonly key: string; readonly value: T; readonly spot: Spot }[]> {
  return {
    read: (tree, spot, desk) => {
      if (!isBranch(tree))
        return refuse(
          desk,
          spot,
          'value-not-keys',
          `Keys with values are expected here: ${keys}.`,
          'Write {key: value, key: value}.',
        );
      const items: { key: string; value: T; spot: Spot }[] = [];
      for (const key of Object.keys(tree)) {
        const here = { up: spot, key };
        const value = readInside(of, tree[key] ?? null, here, desk);
        if (value !== undefined) items.push({ key, value, spot: here });
      }
      return items;
    },
    told: { kind: 'map', of: of.told, keys },
  };
}

/** A reader's message as a sentence. */
export function sentence(words: string): string {
  const end = /[.?!]$/u.test(words) ? words : `${words}.`;
  return end.charAt(0).toUpperCase() + end.slice(1);
}

/** A reader's hint as a sentence, if there is one. */
export function hintOf(words: string | undefined): string | undefined {
  return words === undefined ? undefined : sentence(words);
}

/** Words parted by commas, or a list of them: `cold, clean`. */
export const commaWords: Shape<readonly string[]> = {
  read: (tree, spot, desk) => {
    if (isList(tree)) return list(text).read(tree, spot, desk);
    const words = scalar(tree, spot, desk);
    if (words === undefined || words === 'none') return [];
    return words
      .split(',')
      .map((word) => word.trim())
      .filter((word) => word !== '');
  },
  told: {
    kind: 'either',
    of: [
      { kind: 'text', written: 'words, parted by commas' },
      { kind: 'list', of: text.told },
    ],
  },
};
