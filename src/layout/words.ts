// A text cut into the pieces that may not be parted: words with their face, and what sticks to them.
import type { Inline, Text } from '../sheet/sheet.ts';
import type { Measure } from './measure.ts';
import { recent, type Recent } from './recent.ts';
import type { Face } from './placed.ts';

/** Part of a word in one face. */
export interface Piece {
  readonly text: string;
  readonly face: Face;
  /** Width in ems. */
  readonly em: number;
  readonly struck: boolean;
  readonly link?: string;
}
/** A word: pieces without a line end between them. */
export interface Word {
  readonly pieces: readonly Piece[];
  readonly em: number;
}
/** A word of one piece. */
interface Whole extends Word {
  readonly pieces: readonly [Piece];
}
interface Run {
  readonly text: string;
  readonly face: Face;
  readonly struck: boolean;
  readonly link?: string;
}

/** Signs that stay with the number before them, besides everything that is written with a no-break space. */
const units = new Set(
  'N·m kgf·m kgf·cm lbf·ft lbf·in mm cm m km mi thou in bar psi kPa MPa ml l cc cm³ g kg lb V A mA Ω kΩ W Hz min h s °C °F ° % GBP EUR USD'.split(
    ' ',
  ),
);

/** Cuts a text into words. Control and direction signs are dropped; `links` are the anchors of the sheet. */
export function words(text: Text, face: Face, measure: Measure, links: ReadonlySet<string>): readonly Word[] {
  const runs = typeof text === 'string' ? [plain(text, face)] : text.map((inline) => runOf(inline, face, links));
  return gather(runs, measure);
}

/** A text as it is read, without its faces. */
export function plainText(text: Text): string {
  if (typeof text === 'string') return cleaned(text);
  return text.map((inline) => (typeof inline === 'string' ? cleaned(inline) : cleaned(inline.text))).join('');
}

/** Characters that have one form only, and no control sign among them: nearly every text. */
const asItIs = /^[\x20-\x7e\xa0-\xac\xae-\xff\u2002\u2010-\u2027\u202f\u2212]*$/;

/** One form for each character, no control signs, no signs that turn the direction of writing. */
export function cleaned(text: string): string {
  if (asItIs.test(text)) return text;
  return (
    text
      .normalize('NFC')
      // Whole runs, then a look inside: one pattern for both would try every space of a long run as the first.
      .replace(/\s+/g, (run) => (/[\r\n\t\v\f\u2028\u2029]/.test(run) ? ' ' : run))
      .replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, '')
  );
}

function plain(text: string, face: Face): Run {
  return { text: cleaned(text), face, struck: false };
}

function runOf(inline: Inline, face: Face, links: ReadonlySet<string>): Run {
  if (typeof inline === 'string') return plain(inline, face);
  const text = cleaned(inline.text);
  switch (inline.kind) {
    case 'strong':
      return { text, face: 'strong', struck: false };
    case 'em':
      return { text, face: 'em', struck: false };
    case 'code':
      return { text, face, struck: false };
    case 'struck':
      return { text, face, struck: true };
    case 'link':
      return { text, face, struck: false, ...target(inline.to, links) };
    case 'figure': {
      const whole = inline.mark === undefined ? text : text + ' (' + cleaned(inline.mark) + ')';
      return { text: whole.replaceAll(' ', '\u00a0'), face, struck: false, ...target(inline.to, links) };
    }
  }
}

/** A reference such as `job:2024-05-04-bought` leads to the anchor of that name, if the sheet has it. */
function target(to: string | undefined, links: ReadonlySet<string>): { readonly link?: string } {
  if (to === undefined) return {};
  const after = to.replace(/^[a-z]+:/, '').replace(/^#/, '');
  const found = [to, after, to.replace(':', '-')].find((name) => links.has(name));
  return found === undefined ? {} : { link: found };
}

/** Plain words met lately, so that few are measured or made twice in one document. */
const known = new WeakMap<Measure, Record<Face, Recent<Whole>>>();
const most = 1000;

function storeOf(measure: Measure, face: Face): Recent<Whole> {
  const found = known.get(measure) ?? { regular: recent(most), strong: recent(most), em: recent(most) };
  known.set(measure, found);
  return found[face];
}

function gather(runs: readonly Run[], measure: Measure): readonly Word[] {
  const found: Word[] = [];
  let open: Piece[] = [];
  const close = (): void => {
    if (open.length > 0) found.push({ pieces: open, em: open.reduce((sum, piece) => sum + piece.em, 0) });
    open = [];
  };
  for (const run of runs) {
    const parts = glued(run.text.split(' '));
    const store = run.struck || run.link !== undefined ? undefined : storeOf(measure, run.face);
    let ahead = parts.length;
    for (const part of parts) {
      if (ahead < parts.length) close();
      ahead -= 1;
      if (part === '') continue;
      const isWhole = open.length === 0 && (ahead > 0 || run === runs.at(-1));
      if (isWhole && store !== undefined) found.push(wordOf(part, run.face, measure, store));
      else open.push(pieceOf(part, run, measure, store));
    }
  }
  close();
  return found;
}

/** A word of one piece that is neither struck out nor leads anywhere: the same object each time it is met. */
function wordOf(text: string, face: Face, measure: Measure, store: Recent<Whole>): Whole {
  const before = store.get(text);
  if (before !== undefined) return before;
  const em = measure.width(text, face);
  const word: Whole = { pieces: [{ text, face, em, struck: false }], em };
  store.set(text, word);
  return word;
}

function pieceOf(text: string, run: Run, measure: Measure, store: Recent<Whole> | undefined): Piece {
  const { face, struck, link } = run;
  if (store !== undefined) return wordOf(text, face, measure, store).pieces[0];
  const em = measure.width(text, face);
  return link === undefined ? { text, face, em, struck } : { text, face, em, struck, link };
}

/** Joins with a no-break space what must not be parted: a number and its unit, both sides of a multiplication sign. */
function glued(parts: readonly string[]): readonly string[] {
  if (!parts.some((part, index) => staysWith(part, parts[index - 1]))) return parts;
  const joined: string[] = [];
  for (const part of parts) {
    const last = joined.at(-1);
    if (last !== undefined && staysWith(part, last)) joined[joined.length - 1] = last + '\u00a0' + part;
    else joined.push(part);
  }
  return joined;
}

function staysWith(part: string, last: string | undefined): boolean {
  if (last === undefined || last === '') return false;
  return part === '×' || last.endsWith('\u00a0×') || (part.length < 9 && isUnitAfter(part, last));
}

/** In characters, with the signs that may follow it. */
const longestUnit = 24;

function isUnitAfter(part: string, before: string): boolean {
  const end = before.charCodeAt(before.length - 1);
  if (end < 48 || end > 57 || part.length > longestUnit) return false;
  return units.has(part) || units.has(part.replace(/[.,;:)!?]+$/, ''));
}
