// Text drawn with the document's own font subsets: each word is encoded once a document and shown by one operator a line.
import type PDFDocument from 'pdfkit';
import type { Face } from '../layout/placed.ts';
import { recent, type Recent } from '../layout/recent.ts';
import { fontPath, openFont, shape, type FontName, type ShapedRun } from './faces.ts';
import { readFontTables, subsetFont, type FontTables } from './font-subset.ts';
import { points } from './numbers.ts';

type Document = InstanceType<typeof PDFDocument>;

/** Files of the fonts, taken apart once a process. */
const tables = new Map<FontName, FontTables>();

function tablesOf(name: FontName): FontTables {
  const known = tables.get(name);
  if (known !== undefined) return known;
  const read = readFontTables(fontPath(name));
  tables.set(name, read);
  return read;
}

/** Text of one document. */
export interface Typesetter {
  /** Operators that show a text with its baseline at (x, y) on a page whose y grows downwards. */
  readonly show: (text: string, face: Face, size: number, x: number, y: number) => string;
  /** Fonts that this document has used so far, by the name they have on every page. */
  readonly fonts: ReadonlyMap<string, { readonly reference: PDFKit.PDFKitReference }>;
  readonly missing: ReadonlySet<string>;
}

interface Encoded {
  readonly font: string;
  /** What stands inside the parentheses of a TJ operator, and between two of them. */
  readonly shown: string;
}

/** Encoded words kept of each face, as memory must stay flat. */
const most = 1000;

export function typesetter(doc: Document): Typesetter {
  const gathered = new Map<FontName, PDFKit.GatheredFont>();
  const fonts = new Map<string, { readonly reference: PDFKit.PDFKitReference }>();
  const missing = new Set<string>();
  const stores: Record<Face, Recent<readonly Encoded[]>> = {
    regular: recent(most),
    strong: recent(most),
    em: recent(most),
  };

  const gather = (name: FontName): PDFKit.GatheredFont => {
    const known = gathered.get(name);
    if (known !== undefined) return known;
    doc.font(openFont(name));
    const font = doc._font;
    // Glyph 0 is never shown; the text behind it must still be some character.
    font.unicode[0] = [0xfffd];
    const { subset } = font;
    subset.encode = () => subsetFont(tablesOf(name), subset.glyphs, (glyph) => subset.includeGlyph(glyph));
    gathered.set(name, font);
    fonts.set(font.id, { reference: font.ref() });
    return font;
  };
  /** A word, or a space with the word after it: what is asked for once more is found at once. */
  const encode = (word: string, face: Face): readonly Encoded[] => {
    const store = stores[face];
    const known = store.get(word);
    if (known !== undefined) return known;
    const made = isSpaced(word)
      ? joined([...encode(' ', face), ...encode(word.slice(1), face)])
      : encodeWord(word, face);
    store.set(word, made);
    return made;
  };
  const encodeWord = (word: string, face: Face): readonly Encoded[] => {
    const shaped = shape(word, face);
    for (const character of shaped.missing) missing.add(character);
    return shaped.runs.map((run) => encodeRun(run, gather(run.font)));
  };
  const show: Typesetter['show'] = (text, face, size, x, y) => {
    let out = 'BT 1 0 0 -1 ' + points(x) + ' ' + points(y) + ' Tm';
    let font = '';
    for (let from = 0; from < text.length;) {
      const space = text.indexOf(' ', from + 1);
      const to = space < 0 ? text.length : space;
      for (const piece of encode(text.slice(from, to), face)) {
        if (piece.font !== font) {
          out += (font === '' ? '' : ')]TJ') + '\n/' + piece.font + ' ' + points(size) + ' Tf[(';
          font = piece.font;
        }
        out += piece.shown;
      }
      from = to;
    }
    return font === '' ? '' : out + ')]TJ ET';
  };
  return { show, fonts, missing };
}

function isSpaced(word: string): boolean {
  return word.length > 1 && word.startsWith(' ');
}

/** Neighbours in one font as one. */
function joined(pieces: readonly Encoded[]): readonly Encoded[] {
  const made: Encoded[] = [];
  for (const piece of pieces) {
    const last = made.at(-1);
    if (last?.font === piece.font) made[made.length - 1] = { font: last.font, shown: last.shown + piece.shown };
    else made.push(piece);
  }
  return made;
}

/** Glyph numbers of the subset as two bytes each, with the kerning between them. */
function encodeRun(run: ShapedRun, font: PDFKit.GatheredFont): Encoded {
  const parts = run.glyphs.map((glyph) => {
    const id = font.subset.includeGlyph(glyph.id);
    font.widths[id] ??= glyph.width;
    font.unicode[id] ??= glyph.codePoints;
    const shown = (bytes[id >> 8] ?? '') + (bytes[id & 255] ?? '');
    return Math.abs(glyph.kern) > 0.5 ? shown + ')' + String(Math.round(-glyph.kern)) + '(' : shown;
  });
  return { font: font.id, shown: parts.join('') };
}

/**
 * Bytes as they stand in a string between parentheses (ISO 32000-1, 7.3.4.2). As hexadecimal digits they would be twice as many to
 * put together and to compress.
 */
const bytes: readonly string[] = Array.from({ length: 256 }, (_, byte) => {
  const character = String.fromCharCode(byte);
  return character === '\r' ? '\\r' : '()\\'.includes(character) ? '\\' + character : character;
});
