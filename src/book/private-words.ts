// Words in open text that belong to a person and not to the machine: addresses, telephone numbers, e-mail, names with a title.

/** What a word gives away, in the words of the query. */
export type Gives = 'an e-mail address' | 'a telephone number' | 'an address' | 'a name' | 'an insurance';

export interface PrivateWord {
  readonly gives: Gives;
  readonly text: string;
  /** Offset in the text that was looked through. */
  readonly index: number;
}

const streets =
  'Street|St|Road|Rd|Lane|Ln|Avenue|Ave|Close|Drive|Dr|Terrace|Crescent|Gardens|Square|Grove|Court|Way|Boulevard|Blvd';

/** Words before which a name stands that is somebody’s: relations, and who had it before. */
const someone =
  '(?:[Mm]y|[Oo]ur|[Hh]is|[Hh]er|[Tt]heir|[Tt]he) (?:wife|husband|brother|sister|father|mother|dad|mum|son|daughter|uncle|aunt|cousin|nephew|niece|grandfather|grandmother|friend|mate|neighbour|neighbor|landlord|seller|buyer|(?:former |previous |last |first )?(?:owner|keeper)|widow)';

/** Common practice of how such things are written; no list of names, so a bare first name in the text is not found. */
const patterns: readonly { readonly gives: Gives; readonly pattern: RegExp }[] = [
  { gives: 'an e-mail address', pattern: /[\w.+-]+@[\w-]+(?:\.[\w-]+)+/gu },
  {
    gives: 'a telephone number',
    pattern:
      /(?<![\w.+-])(?:\+\d[\d ()/-]{6,18}\d|\(?0\d{2,5}\)?[ /-]\d{3,4}[ -]?\d{3,4}|\(\d{3}\) ?\d{3}-\d{4}|\d{3}-\d{3}-\d{4})(?![\w-])/gu,
  },
  {
    gives: 'a telephone number',
    pattern: /(?<=\b(?:tele)?(?:phone|tel|mobile|ring|rang|call|called)\b[^\d\n]{0,12})\d[\d -]{4,}\d(?![\w-])/giu,
  },
  {
    gives: 'an address',
    pattern: new RegExp(String.raw`\b\d{1,5}[a-z]?,? (?:\p{Lu}[\p{L}']+ ){1,3}(?:${streets})\b`, 'gu'),
  },
  { gives: 'an address', pattern: /\b\p{Lu}[\p{Ll}]+(?:stra(?:ß|ss)e|weg|gasse|platz) \d{1,4}[a-z]?\b/gu },
  { gives: 'an address', pattern: /\b[A-Z]{1,2}\d[A-Z\d]? \d[ABD-HJLNP-UW-Z]{2}\b/gu },
  {
    gives: 'a name',
    pattern: /\b(?:Mr|Mrs|Ms|Miss|Dr|Herr|Frau|Monsieur|Madame|Signora?)\.? \p{Lu}[\p{L}'-]+(?: \p{Lu}[\p{L}'-]+)?/gu,
  },
  {
    gives: 'a name',
    pattern: new RegExp(
      String.raw`(?<=\b(?:${someone}) )\p{Lu}[\p{L}'’-]*\p{Ll}(?: \p{Lu}[\p{L}'’-]*\p{Ll})?(?!\p{L})`,
      'gu',
    ),
  },
  {
    gives: 'an insurance',
    pattern: /(?<=\b[Pp]olicy(?: number| no\.?)?:? )(?=[\p{L}/-]*\d)[\p{L}\d][\p{L}\d/-]{3,}/gu,
  },
  {
    gives: 'an insurance',
    pattern: /(?<=\b(?:[Ii]nsurer:?|[Ii]nsured (?:with|by|at)) )\p{Lu}[\p{L}'’&-]+(?: \p{Lu}[\p{L}'’&-]+){0,2}/gu,
  },
];

/** Telephone numbers, addresses: each looked for from a digit on, of which most texts have few. */
const fromADigit =
  /\d(?:\)?[ /-]+\d|\d{5}|[a-z]?,? \p{Lu}|(?<=[A-Z]\d)[A-Z\d]? \d[A-Z]|(?<=(?:stra(?:ß|ss)e|weg|gasse|platz) \d))/u;

/** Names, from the space before their capital letter backwards. */
const beforeACapital =
  / \p{Lu}(?<=\b(?:M(?:r|rs|s|iss|onsieur|adame)|Dr|Herr|Frau|Signora?)\.? \p{Lu}|\b(?:[Mm]y|[Oo]ur|[Hh]is|[Hh]er|[Tt]heir|[Tt]he) [a-z ]{3,16} \p{Lu})/u;

/** In every e-mail address and telephone number abroad; in every word of insurance. */
const signs = ['@', '+', 'olicy', 'nsure'];

/** Whether a text could hold any of these words: most records are done with here. Cheap, and asked of whole records. */
export function mayHoldPrivateWords(text: string): boolean {
  return signs.some((sign) => text.includes(sign)) || fromADigit.test(text) || beforeACapital.test(text);
}

/** Every such word of a text, in the order of the text; one that lies inside another is not told twice. */
export function privateWords(text: string): readonly PrivateWord[] {
  if (!mayHoldPrivateWords(text)) return [];
  // To look first costs little; to begin a list of all matches costs a pattern made anew.
  const found = patterns
    .filter(({ pattern }) => text.search(pattern) >= 0)
    .flatMap(({ gives, pattern }) =>
      [...text.matchAll(pattern)].map(({ 0: word, index }): PrivateWord => ({ gives, text: word.trim(), index })),
    );
  const sorted = found.toSorted((a, b) => a.index - b.index || b.text.length - a.text.length);
  return sorted.filter(
    (one, at) => !sorted.some((other, before) => before < at && one.index < other.index + other.text.length),
  );
}

/** A hand written as a person is called (`Tom`, `T. Baker`), not as what they are (`owner`, `helper`) nor by initials (`TB`). */
export function isAPersonsName(hand: string): boolean {
  return /^\p{Lu}[\p{L}'.-]*\p{Ll}/u.test(hand) || /^\p{Lu}\. ?\p{Lu}\p{Ll}/u.test(hand);
}
