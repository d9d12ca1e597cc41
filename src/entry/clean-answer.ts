// What a person wrote, as one line of plain text; and what it says as a tick.

const unseen = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}\uFFFD]+/gu;

/** One line, single spaces; characters that cannot be seen are taken as a space. Empty text is no answer. */
export function cleanAnswer(value: string): string {
  return value.replaceAll(unseen, ' ').replaceAll(/\s+/gu, ' ').trim();
}

/** `not done`, as a record keeps it of a blank. */
export const notDone = 'not done';
/** `not known`, as a record keeps it of a blank that takes no `?`. */
export const notKnown = 'not known';

export type TickSaid = 'yes' | 'no' | 'not known';

const words: Readonly<Record<string, TickSaid>> = {
  yes: 'yes',
  y: 'yes',
  x: 'yes',
  '✓': 'yes',
  no: 'no',
  n: 'no',
  '-': 'no',
  '?': 'not known',
};

/** What an answer says as a tick; undefined where it says something else. */
export function tickSaid(value: string): TickSaid | undefined {
  const word = value.toLowerCase();
  return Object.hasOwn(words, word) ? words[word] : undefined;
}
