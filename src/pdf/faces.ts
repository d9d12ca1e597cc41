// The shipped fonts, opened once a process: which glyphs a word is made of, how wide it is, and what no font can show.
import { fileURLToPath } from 'node:url';
import { openSync, type Font } from 'fontkit';
import type { Face } from '../layout/placed.ts';
import { recent, type Recent } from '../layout/recent.ts';
import { plainWords, type PlainWords } from './plain-words.ts';

export type FontName = Face | 'signs';

/** One glyph of a word; widths in thousandths of an em. */
export interface ShapedGlyph {
  readonly id: number;
  readonly width: number;
  /** What is added to the width before the next glyph (kerning). */
  readonly kern: number;
  readonly codePoints: readonly number[];
}
/** Part of a word in one font. */
export interface ShapedRun {
  readonly font: FontName;
  readonly glyphs: readonly ShapedGlyph[];
}
export interface ShapedWord {
  readonly runs: readonly ShapedRun[];
  /** Width in ems. */
  readonly em: number;
  /** Characters that no font has, printed as their code points. */
  readonly missing: readonly string[];
}

const files: Record<FontName, string> = {
  regular: 'splitpin-sans-regular.ttf',
  strong: 'splitpin-sans-semibold.ttf',
  em: 'splitpin-sans-italic.ttf',
  signs: 'splitpin-signs.ttf',
};

/** Words kept of each face, so that memory stays flat over thousands of pages. */
const most = 1000;

const opened = new Map<FontName, Font>();
const plainShapers = new Map<Face, PlainWords>();
const shapes: Record<Face, Recent<ShapedWord>> = { regular: recent(most), strong: recent(most), em: recent(most) };

/** Where the file of a font lies. */
export function fontPath(name: FontName): string {
  return fileURLToPath(new URL('fonts/' + files[name], import.meta.url));
}

/** The font of a name, opened at its first use. */
export function openFont(name: FontName): Font {
  const known = opened.get(name);
  if (known !== undefined) return known;
  const font = openSync(fontPath(name));
  opened.set(name, font);
  return font;
}

/** A word in a face, with signs from the second font where the face lacks them. */
export function shape(word: string, face: Face): ShapedWord {
  const store = shapes[face];
  const known = store.get(word);
  if (known !== undefined) return known;
  const shaped = shapeWord(word, face);
  store.set(word, shaped);
  return shaped;
}

/** Width in ems of a text: words and spaces, without kerning across a space. */
export function widthOf(text: string, face: Face): number {
  if (!text.includes(' ') || text === ' ') return shape(text, face).em;
  const parts = text.split(' ');
  const spaces = (parts.length - 1) * shape(' ', face).em;
  return parts.reduce((sum, part) => sum + (part === '' ? 0 : shape(part, face).em), spaces);
}

function shapeWord(word: string, face: Face): ShapedWord {
  const glyphs = plainIn(face)(word);
  if (glyphs !== undefined) return { runs: [{ font: face, glyphs }], em: emsOf(glyphs), missing: [] };
  return shapeByFont(word, face);
}

function plainIn(face: Face): PlainWords {
  const known = plainShapers.get(face);
  if (known !== undefined) return known;
  const shaper = plainWords(openFont(face));
  plainShapers.set(face, shaper);
  return shaper;
}

function emsOf(glyphs: readonly ShapedGlyph[]): number {
  return glyphs.reduce((sum, glyph) => sum + glyph.width + glyph.kern, 0) / 1000;
}

/** Any word, shaped by the fonts themselves. */
export function shapeByFont(word: string, face: Face): ShapedWord {
  const runs: ShapedRun[] = [];
  const missing: string[] = [];
  let open = '';
  let font: FontName = face;
  const close = (): void => {
    if (open !== '') runs.push(shapeRun(open, font));
    open = '';
  };
  for (const character of word) {
    const from = fontFor(character, face);
    if (from === undefined) missing.push(character);
    const next = from ?? face;
    if (next !== font) {
      close();
      font = next;
    }
    open += from === undefined ? codePointName(character) : character;
  }
  close();
  return { runs, em: emsOf(runs.flatMap((run) => run.glyphs)), missing };
}

function fontFor(character: string, face: Face): FontName | undefined {
  const code = character.codePointAt(0) ?? 0;
  if (openFont(face).hasGlyphForCodePoint(code)) return face;
  return openFont('signs').hasGlyphForCodePoint(code) ? 'signs' : undefined;
}

/** A character no font has is printed as its name in the standard, such as U+65E5. */
function codePointName(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  return 'U+' + code.toString(16).toUpperCase().padStart(4, '0');
}

function shapeRun(text: string, name: FontName): ShapedRun {
  const font = openFont(name);
  const scale = 1000 / font.unitsPerEm;
  const run = font.layout(text);
  const characters = Array.from(text).map((character) => character.codePointAt(0) ?? 0);
  const oneEach = characters.length === run.glyphs.length;
  const glyphs = run.glyphs.map((glyph, index): ShapedGlyph => {
    const character = oneEach ? characters[index] : undefined;
    const width = glyph.advanceWidth * scale;
    const advance = (run.positions[index]?.xAdvance ?? glyph.advanceWidth) * scale;
    // A font forgets the characters of a glyph that it first met as part of another glyph; the text remembers them.
    const codePoints = character === undefined ? glyph.codePoints : [character];
    return { id: glyph.id, width, kern: advance - width, codePoints };
  });
  return { font: name, glyphs };
}
