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
  /** What stands between the brackets of a TJ operator. */
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
  const encode = (word: string, face: Face): readonly Encoded[] => {
    const store = stores[face];
    const known = store.get(word);
    if (known !== undefined) return known;
    const shaped = shape(word, face);
    for (const character of shaped.missing) missing.add(character);
    const made = shaped.runs.map((run) => encodeRun(run, gather(run.font)));
    store.set(word, made);
    return made;
  };
  const show: Typesetter['show'] = (text, face, size, x, y) => {
    const parts = text.split(' ');
    let out = 'BT 1 0 0 -1 ' + points(x) + ' ' + points(y) + ' Tm';
    let font = '';
    for (const [index, part] of parts.entries()) {
      const pieces = index === 0 ? [] : encode(' ', face);
      for (const piece of part === '' ? pieces : [...pieces, ...encode(part, face)]) {
        if (piece.font !== font) {
          out += (font === '' ? '' : ']TJ') + '\n/' + piece.font + ' ' + points(size) + ' Tf[';
          font = piece.font;
        }
        out += piece.shown;
      }
    }
    return font === '' ? '' : out + ']TJ ET';
  };
  return { show, fonts, missing };
}

/** Hexadecimal glyph numbers of the subset, with the kerning between them. */
function encodeRun(run: ShapedRun, font: PDFKit.GatheredFont): Encoded {
  let shown = '<';
  for (const glyph of run.glyphs) {
    const id = font.subset.includeGlyph(glyph.id);
    font.widths[id] ??= glyph.width;
    font.unicode[id] ??= glyph.codePoints;
    shown += id.toString(16).padStart(4, '0');
    if (Math.abs(glyph.kern) > 0.5) shown += '>' + String(Math.round(-glyph.kern)) + '<';
  }
  return { font: font.id, shown: (shown + '>').replace('<>', '') };
}
