// Where a maker's value was taken from: the book for the whole file, page and frame range and correction for each entry.
import type { Source } from '../model.ts';
import { refuse } from '../shapes/desk.ts';
import { group, may, need } from '../shapes/fields.ts';
import { scalar, text } from '../shapes/plain.ts';
import type { Shape } from '../shapes/shape.ts';

type Frames = NonNullable<Source['frames']>;

/** `from A to B`, `from A`, `to B`. */
export const frames: Shape<Frames> = {
  read: (tree, spot, desk) => {
    const words = scalar(tree, spot, desk);
    if (words === undefined) return undefined;
    const found = /^(?:from\s+(\S+))?\s*(?:to\s+(\S+))?$/u.exec(words.trim());
    const [from, to] = [found?.[1], found?.[2]];
    if (from === undefined && to === undefined) {
      return refuse(
        desk,
        spot,
        'word-unknown',
        `“${words}” is not a range of frame numbers.`,
        'Write `from A`, `to B` or `from A to B`.',
      );
    }
    return { ...(from === undefined ? {} : { from }), ...(to === undefined ? {} : { to }) };
  },
  told: { kind: 'text', written: 'a range of frame numbers', example: 'from LP175-00001 to LP175-09999' },
};

/** The book. */
export const bookSource: Shape<Source> = group({
  title: need(text, 'title of the book or sheet', { example: 'Larkmoor Pipit 175 workshop book' }),
  edition: may(text, 'edition or year', { example: '1968' }),
  page: may(text, 'page', { example: '31' }),
  frames: may(frames, 'frame numbers it is for'),
});

const corrected = group({
  was: need(text, 'what the book says', { example: '0.50 mm' }),
  why: need(text, 'why that is wrong', { example: 'misprint, see page 40' }),
});

/** Keys that every entry of a maker's file may carry. */
export const sourceFields = {
  page: may(text, 'page in the book', { example: '31' }),
  frames: may(frames, 'frame numbers this entry is for'),
  corrected: may(corrected, 'what was wrong in the book', { example: '{was: 0.50 mm, why: misprint}' }),
} as const;

interface Cited {
  readonly page?: string;
  readonly frames?: Frames;
  readonly corrected?: { readonly was: string; readonly why: string };
}

/** The book's source with an entry's own page, frames and correction; the entry without them. */
export function withSource<T extends Cited>(
  found: T,
  book: Source,
): Omit<T, keyof Cited> & { readonly source: Source } {
  const { page, frames: range, corrected: change, ...rest } = found;
  const source = {
    ...book,
    ...(page === undefined ? {} : { page }),
    ...(range === undefined ? {} : { frames: range }),
    ...(change === undefined ? {} : { corrected: change }),
  };
  return { ...rest, source };
}
