// Words set into lines of a width. A word wider than the line is broken with a visible mark.
import type { Measure } from './measure.ts';
import type { Face } from './placed.ts';
import type { Piece, Word } from './words.ts';

/** A stretch of a line in one face; places and widths in ems. */
export interface Stretch {
  text: string;
  readonly face: Face;
  readonly struck: boolean;
  readonly link: string | undefined;
  readonly at: number;
  em: number;
  /** The mark of a broken word, which is no part of the text. */
  readonly mark?: boolean;
}
export interface Line {
  readonly stretches: readonly Stretch[];
  /** Width in ems. */
  readonly em: number;
}

export const breakMark = '↩';

/** Sets words ragged right into lines of `width` ems; no words give no lines. */
export function breakLines(words: readonly Word[], width: number, measure: Measure): readonly Line[] {
  const lines: Line[] = [];
  let open: Stretch[] = [];
  let em = 0;
  const close = (): void => {
    if (open.length > 0) lines.push({ stretches: open, em });
    open = [];
    em = 0;
  };
  const room = width + 0.001;
  for (const word of words) {
    const last = open.at(-1);
    const space = last === undefined ? 0 : measure.width(' ', last.face);
    if (em + space + word.em <= room) {
      em = add(open, word.pieces, em, space);
      continue;
    }
    close();
    if (word.em <= room) {
      em = add(open, word.pieces, 0, 0);
      continue;
    }
    const parts = broken(word, width, measure);
    for (const part of parts.slice(0, -1)) lines.push(part);
    const rest = parts.at(-1);
    if (rest !== undefined) {
      open = [...rest.stretches];
      em = rest.em;
    }
  }
  close();
  return lines;
}

/** Adds the pieces of a word to an open line, after a space where one is due; gives the new width. */
function add(open: Stretch[], pieces: readonly Piece[], from: number, space: number): number {
  let at = from;
  let due = space;
  for (const piece of pieces) {
    const last = open.at(-1);
    if (last !== undefined && last.face === piece.face && last.struck === piece.struck && last.link === piece.link) {
      last.text += due > 0 ? ' ' + piece.text : piece.text;
      last.em += due + piece.em;
    } else {
      if (last !== undefined && due > 0) last.text += ' ';
      open.push({
        text: piece.text,
        face: piece.face,
        struck: piece.struck,
        link: piece.link,
        at: at + due,
        em: piece.em,
      });
    }
    at += due + piece.em;
    due = 0;
  }
  return at;
}

/** A word that is too long, cut between characters; every part but the last ends with the mark. */
function broken(word: Word, width: number, measure: Measure): readonly Line[] {
  const markEm = measure.width(breakMark, 'regular');
  const lines: Line[] = [];
  let open: Stretch[] = [];
  let em = 0;
  for (const piece of word.pieces) {
    for (const character of characters(piece.text, (width - markEm) * 0.999, piece.face, measure)) {
      const wide = measure.width(character, piece.face);
      if (open.length > 0 && em + wide + markEm > width) {
        open.push({ text: breakMark, face: 'regular', struck: false, link: undefined, at: em, em: markEm, mark: true });
        lines.push({ stretches: open, em: em + markEm });
        open = [];
        em = 0;
      }
      em = add(open, [{ ...piece, text: character, em: wide }], em, 0);
    }
  }
  lines.push({ stretches: open, em });
  return lines;
}

/** Characters with the marks that stand over or under them; the marks by themselves only where both are wider than a line. */
function characters(text: string, most: number, face: Face, measure: Measure): readonly string[] {
  const whole = text.match(/\P{M}\p{M}*|\p{M}+/gu) ?? [];
  return whole.flatMap((each) => (each.length > 1 && measure.width(each, face) > most ? Array.from(each) : [each]));
}
