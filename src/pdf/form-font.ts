// The whole text face for what is typed into a form: a subset made for one sheet lacks the letters of tomorrow.
import type PDFDocument from 'pdfkit';
import { readFileSync } from 'node:fs';
import { fontPath, openFont, shape } from './faces.ts';

type Document = InstanceType<typeof PDFDocument>;
type Reference = PDFKit.PDFKitReference;

/** Code points of WinAnsiEncoding from 128 to 159 (ISO 32000-1, annex D.2); the rest are their own. */
const windows = [
  0x20ac, 0x2022, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0x2022,
  0x017d, 0x2022, 0x2022, 0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a,
  0x0153, 0x2022, 0x017e, 0x0178,
];

/** Signs of the trade at code points that the encoding leaves empty, with the names by which viewers find them. */
const signs = [
  { code: 0x81, point: 0x2126, name: 'Omega' },
  { code: 0x8d, point: 0x2264, name: 'lessequal' },
  { code: 0x8f, point: 0x2265, name: 'greaterequal' },
  { code: 0x90, point: 0x2192, name: 'arrowright' },
  { code: 0x9d, point: 0x2248, name: 'approxequal' },
] as const;

/** Name of the font in the default appearance of every field. */
export const formFontName = 'SpText';

/**
 * The regular face as a simple font in the encoding that every viewer can type into, with Ω ≤ ≥ → ≈ where that one is empty. What
 * is typed of other signs is kept in the value all the same.
 */
export function formFont(doc: Document): Reference {
  const file = readFileSync(fontPath('regular'));
  const program = doc.ref({ Length1: file.length });
  program.end(file);
  const { ascent, descent, bbox, capHeight, unitsPerEm } = openFont('regular');
  const scaled = (length: number): number => Math.round((length * 1000) / unitsPerEm);
  const name = 'SplitpinSans-Regular';
  const descriptor = doc.ref({
    Type: 'FontDescriptor',
    FontName: name,
    Flags: 32,
    FontBBox: [bbox.minX, bbox.minY, bbox.maxX, bbox.maxY].map(scaled),
    ItalicAngle: 0,
    Ascent: scaled(ascent),
    Descent: scaled(descent),
    CapHeight: scaled(capHeight),
    StemV: 80,
    FontFile2: program,
  });
  descriptor.end(undefined);
  const font = doc.ref({
    Type: 'Font',
    Subtype: 'TrueType',
    BaseFont: name,
    FirstChar: 32,
    LastChar: 255,
    Widths: Array.from({ length: 224 }, (_, index) => widthAt(32 + index)),
    Encoding: {
      Type: 'Encoding',
      BaseEncoding: 'WinAnsiEncoding',
      Differences: signs.flatMap(({ code, name }) => [code, name]),
    },
    FontDescriptor: descriptor,
  });
  font.end(undefined);
  return font;
}

function widthAt(code: number): number {
  const sign = signs.find((one) => one.code === code);
  if (sign !== undefined) return Math.round(shape(String.fromCodePoint(sign.point), 'regular').em * 1000);
  const point = code >= 128 && code < 160 ? (windows[code - 128] ?? 0x2022) : code === 127 ? 0x2022 : code;
  return Math.round(shape(String.fromCodePoint(point), 'regular').em * 1000);
}
