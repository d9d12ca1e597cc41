// Looks through the text of a file of a package for every private value: as written, as HTML, JSON or an address would write it.
import { isBareWord, patternOf, type PrivateValue } from './private-value.ts';

export interface FoundPrivate {
  readonly file: string;
  readonly value: PrivateValue;
  /** In the name of the file. */
  readonly inName?: true;
}

export interface Looker {
  /** Everything that is found in a text of a file. `ours`: the text is the program's own but for what the records put in. */
  readonly inText: (file: string, text: string, ours: boolean) => readonly FoundPrivate[];
  readonly inName: (file: string) => readonly FoundPrivate[];
  /** Bare words that are the program's own as well, so that pages say nothing of them. */
  readonly notTold: readonly PrivateValue[];
}

/** `own` is the program's own text: a word that stands in it cannot be told apart in pages that are made of it. */
export function lookFor(hunted: readonly PrivateValue[], own: string): Looker {
  const each = hunted.flatMap((value) => {
    const pattern = patternOf(value.text);
    const anyCase = patternOf(value.text, true);
    if (pattern === undefined || anyCase === undefined) return [];
    return [{ value, pattern, anyCase, inOwn: own.match(pattern) !== null }];
  });
  return {
    inText: (file, text, ours) => {
      const forms = [...new Set([text, unfolded(text)])];
      return each
        .filter(({ value, inOwn }) => !inOwn || !(ours || isBareWord(value.text)))
        .filter(({ pattern }) => forms.some((form) => form.match(pattern) !== null))
        .map(({ value }) => ({ file, value }));
    },
    inName: (file) => {
      const form = unfolded(file);
      return each
        .filter(({ anyCase, inOwn }) => !inOwn && form.match(anyCase) !== null)
        .map(({ value }): FoundPrivate => ({ file, value, inName: true }));
    },
    notTold: each.filter(({ value, inOwn }) => inOwn && isBareWord(value.text)).map(({ value }) => value),
  };
}

const names: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
  shy: '',
};

/** A text without markup, codes and invisible letters, so that nothing hides in how it is written. */
function unfolded(text: string): string {
  return text
    .replaceAll(/<\/?[a-z][^<>]*>/giu, (tag) => ` ${(tag.match(/="[^"]*"/gu) ?? []).join(' ')} `)
    .replaceAll(
      /&(?:#(\d{1,7})|#x([0-9a-f]{1,6})|([a-z]{2,5}));/giu,
      (whole, decimal?: string, hex?: string, name?: string) =>
        name === undefined
          ? letter(decimal === undefined ? Number.parseInt(hex ?? '0', 16) : Number(decimal))
          : (names[name.toLowerCase()] ?? whole),
    )
    .replaceAll(/\\u([0-9a-f]{4})/giu, (_whole, hex: string) => letter(Number.parseInt(hex, 16)))
    .replaceAll(/(?:%[0-9a-f]{2})+/giu, decodedAddress)
    .replaceAll(/[\u00ad\u200b-\u200d\u2060\ufeff]/gu, '')
    .normalize('NFC');
}

function letter(code: number): string {
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : '';
}

function decodedAddress(codes: string): string {
  try {
    return decodeURIComponent(codes);
  } catch {
    return codes;
  }
}
