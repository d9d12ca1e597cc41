// One name for one thing: `Cylinder head nuts`, `cylinder-head-nut` and `the cylinder head nut` meet in one key.
import type { MakerData } from '../records/model.ts';

/** Turns what somebody wrote into the key that everything in the book is matched by. */
export type Namer = (thing: string) => string;

const sides = new Set([
  'left',
  'right',
  'upper',
  'lower',
  'inner',
  'outer',
  'nearside',
  'offside',
  'near',
  'off',
  'side',
]);

/** A plural is the same thing; only matching sees this form, it is never printed. */
function singular(word: string): string {
  const plural = word.length > 3 && word.endsWith('s') && !word.endsWith('ss') && !word.endsWith('us');
  return plural ? word.slice(0, -1) : word;
}

/** Most names are written plainly already: then there is nothing to take apart. */
const isPlain = /^(?!(?:the|a)(?: |$))[a-z\d]*[a-rt-z\d](?: [a-z\d]*[a-rt-z\d])*$/;

/** Small letters, single spaces, no article, no hyphens, no plural. */
export function plainName(text: string): string {
  if (isPlain.test(text)) return text;
  const plain = /^[ -~]*$/u.test(text) ? text.toLowerCase() : text.normalize('NFC').toLowerCase();
  const words = plain
    .replaceAll(/[\s_\-–—]+/gu, ' ')
    .trim()
    .split(' ');
  const first = words[0] === 'the' || words[0] === 'a' ? 1 : 0;
  let name = singular(words[first] ?? '');
  for (let index = first + 1; index < words.length; index += 1) name += ` ${singular(words[index] ?? '')}`;
  return name;
}

/** Most keys hold no word for a side, and need not be taken apart. */
const holdsSide = new RegExp(`(?:^| )(?:${[...sides].join('|')})(?: |$)`);

/** The key without words for a side: `left barrel` is also `barrel` when it comes to what was disturbed. */
export function withoutSide(key: string): string {
  if (!holdsSide.test(key)) return key;
  const kept = key.split(' ').filter((word) => !sides.has(word));
  return kept.length === 0 ? key : kept.join(' ');
}

/** A namer is kept for as long as its maker's data is: names are worked out once, not after every change of a record. */
const namers = new WeakMap<MakerData, Namer>();

/** A namer that knows the ids and names in the maker's data; the id's form wins. */
export function makeNamer(maker: MakerData): Namer {
  const known = namers.get(maker);
  if (known !== undefined) return known;
  const made = namerOf(maker);
  namers.set(maker, made);
  return made;
}

function namerOf(maker: MakerData): Namer {
  const aliases = new Map<string, string>();
  const named = [...maker.fasteners, ...maker.limits, ...maker.settings, ...maker.fluids];
  for (const one of named) aliases.set(plainName(one.id), plainName(one.id));
  for (const one of named) {
    const name = plainName(one.name);
    if (!aliases.has(name)) aliases.set(name, plainName(one.id));
  }
  const seen = new Map<string, string>();
  return (thing) => {
    const known = seen.get(thing);
    if (known !== undefined) return known;
    const plain = plainName(thing);
    const key = aliases.get(plain) ?? plain;
    seen.set(thing, key);
    return key;
  };
}

/** Does the text hold the word (or words), plural or not? For conditions of use and for words of the trade. */
export function hasWords(text: string, words: string): boolean {
  return ` ${plainName(text).replaceAll(/[^\p{L}\p{N} ]+/gu, ' ')} `.includes(` ${plainName(words)} `);
}

/** The same answer for the same text, worked out once: for looks that ask the same few names of thousands of records. */
export function remembered<T, Name extends string = string>(answer: (text: Name) => T): (text: Name) => T {
  const known = new Map<Name, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const fresh = answer(text);
    known.set(text, fresh);
    return fresh;
  };
}
