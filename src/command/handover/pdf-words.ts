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
    const text = Buffer.from(decodePDFRawStream(object).decode()).toString('utf8');
    if (!/\bBT\b/u.test(text)) words.push(text);
    else {
      const shown = shownText(text, fonts);
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

const shows = /\/([^\s/[\]<>()]+)\s+[\d.]+\s+Tf|\[([^\]]*)\]\s*TJ|<([0-9a-fA-F]*)>\s*Tj|\bET\b/gu;

/** What a page shows, each run of text on a line; undefined where a glyph has no letter. */
function shownText(content: string, fonts: ReadonlyMap<string, GlyphLetters>): string | undefined {
  let letters: GlyphLetters | undefined;
  let text = '';
  for (const [whole, font, many, one] of content.matchAll(shows)) {
    if (font !== undefined) letters = fonts.get(font);
    else if (whole === 'ET') text += '\n';
    else {
      const codes =
        (many ?? `<${one ?? ''}>`)
          .match(/<[0-9a-fA-F]*>/gu)
          ?.join('')
          .replaceAll(/[<>]/gu, '') ?? '';
      if (codes !== '' && letters === undefined) return undefined;
      text += letters?.(codes) ?? '';
    }
  }
  return text;
}
