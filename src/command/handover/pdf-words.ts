// Every word in a PDF of ours: what its pages show, what it says of itself, and the files inside it, as text to be looked through.
import {
  PDFArray,
  PDFDict,
  PDFHexString,
  PDFName,
  PDFParser,
  PDFRawStream,
  PDFString,
  decodePDFRawStream,
  type PDFContext,
  type PDFObject,
} from 'pdf-lib';
import { glyphLetters, type GlyphLetters } from './glyph-letters.ts';

/** Undefined where the file cannot be looked through as a whole: nobody can say then what is in it. */
export async function pdfWords(bytes: Uint8Array): Promise<string | undefined> {
  try {
    const context = await PDFParser.forBytesWithOptions(bytes, Number.MAX_SAFE_INTEGER, false, false).parseDocument();
    return wordsOf(context);
  } catch {
    return undefined;
  }
}

function wordsOf(context: PDFContext): string | undefined {
  const fonts = fontsOf(context);
  const words: string[] = [];
  const strings = new Set<string>();
  for (const [, object] of context.enumerateIndirectObjects()) {
    gatherStrings(object instanceof PDFRawStream ? object.dict : object, strings);
    if (!(object instanceof PDFRawStream) || isGlyphsOrPixels(object.dict)) continue;
    const bytes = Buffer.from(decodePDFRawStream(object).decode());
    const content = bytes.toString('latin1');
    if (isFile(object.dict) || !/\bBT\b/u.test(content)) words.push(bytes.toString('utf8'));
    else {
      const shown = shownText(content, fonts);
      if (shown === undefined) return undefined;
      words.push(shown);
    }
  }
  return [...words, ...strings].join('\n');
}

/** Fonts, pictures and colour: no words in them. Letters of fonts are read where text is shown. */
function isGlyphsOrPixels(dict: PDFDict): boolean {
  const kind = dict.get(PDFName.of('Subtype'));
  const isFontFile = ['Length1', 'N'].some((key) => dict.get(PDFName.of(key)) !== undefined);
  return kind === PDFName.of('Image') || isFontFile || kind === PDFName.of('CIDFontType0C');
}

/** What is carried inside, and what the file says of itself, are texts whatever stands in them. */
function isFile(dict: PDFDict): boolean {
  const type = dict.get(PDFName.of('Type'));
  return type === PDFName.of('EmbeddedFile') || type === PDFName.of('Metadata');
}

/** Texts anywhere in an object: titles, descriptions, file names, what was typed. */
function gatherStrings(object: PDFObject | undefined, into: Set<string>): void {
  if (object instanceof PDFString || object instanceof PDFHexString) into.add(object.decodeText());
  else if (object instanceof PDFArray) object.asArray().forEach((one) => gatherStrings(one, into));
  else if (object instanceof PDFDict) object.entries().forEach(([, one]) => gatherStrings(one, into));
}

/** Fonts by the name that pages call them; our writer gives each name to one font only. */
function fontsOf(context: PDFContext): ReadonlyMap<string, GlyphLetters> {
  const found = new Map<string, GlyphLetters>();
  const visit = (object: PDFObject | undefined): void => {
    if (!(object instanceof PDFDict)) return;
    const fonts = context.lookup(object.get(PDFName.of('Font')));
    if (fonts instanceof PDFDict) {
      for (const [name, ref] of fonts.entries()) {
        const font = context.lookup(ref);
        const letters = font instanceof PDFDict ? lettersOf(font, context) : undefined;
        if (letters !== undefined) found.set(name.decodeText(), letters);
      }
    }
    visit(context.lookup(object.get(PDFName.of('Resources'))));
  };
  for (const [, object] of context.enumerateIndirectObjects())
    visit(object instanceof PDFRawStream ? object.dict : object);
  return found;
}

function lettersOf(font: PDFDict, context: PDFContext): GlyphLetters | undefined {
  const map = context.lookup(font.get(PDFName.of('ToUnicode')));
  return map instanceof PDFRawStream
    ? glyphLetters(Buffer.from(decodePDFRawStream(map).decode()).toString('latin1'))
    : undefined;
}

/** Texts between parentheses or as hexadecimal digits; whatever bytes they hold, nothing inside them is an operator. */
const texts = String.raw`\((?:\\[^]|[^\\()])*\)|<[0-9a-fA-F]*>`;
const shows = new RegExp(
  String.raw`\/([^\s/[\]<>()]+)\s+[\d.]+\s+Tf|\[((?:${texts}|[^\](<])*)\]\s*TJ|(${texts})\s*Tj|\bET\b`,
  'gu',
);

/** What a page shows, each run of text on a line; undefined where letters are not known, or nothing could be read of what it shows. */
function shownText(content: string, fonts: ReadonlyMap<string, GlyphLetters>): string | undefined {
  let letters: GlyphLetters | undefined;
  let text = '';
  for (const [whole, font, many, one] of content.matchAll(shows)) {
    if (font !== undefined) letters = fonts.get(font);
    else if (whole === 'ET') text += '\n';
    else {
      const shown = (many ?? one ?? '').match(new RegExp(texts, 'gu')) ?? [];
      const codes = shown.map(codesOf).join('');
      if (codes !== '' && letters === undefined) return undefined;
      text += letters?.(codes) ?? '';
    }
  }
  return /\S/u.test(text) || !/\bT[jJ]\b/u.test(content) ? text : undefined;
}

const ends: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };

/** Numbers of glyphs as hexadecimal digits; of a text between parentheses without its escapes (ISO 32000-1, 7.3.4.2). */
function codesOf(shown: string): string {
  const inside = shown.slice(1, -1);
  if (shown.startsWith('<')) return inside;
  const plain = inside.replaceAll(/\\([0-7]{1,3}|\n|[^])/gu, (_, after: string) => {
    if (/^[0-7]/u.test(after)) return String.fromCharCode(Number.parseInt(after, 8) & 255);
    return after === '\n' ? '' : (ends[after] ?? after);
  });
  return Buffer.from(plain, 'latin1').toString('hex');
}
