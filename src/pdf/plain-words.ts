// Words of plain letters and signs, put together from glyphs and pairs that are asked of the font once: all that our fonts do to
// such a word is kerning, and that goes by pairs. Asking the font for every word is most of the cost of a first sheet.
import type { Font } from 'fontkit';
import type { ShapedGlyph } from './faces.ts';
import { kerning } from './kern-table.ts';

/** No mark that joins another character, no sign that is hidden, no script that is shaped by rules of its own. */
const plain = /^[\x20-\x7e\xa0-\xac\xae-\xff\u03a9\u2002\u2010-\u2027\u202f\u2080-\u2089\u2212]+$/u;

/** Shapes a word of plain characters; undefined for any other, which the font itself must shape. */
export type PlainWords = (word: string) => readonly ShapedGlyph[] | undefined;

/** For one font, which keeps what it was asked. */
export function plainWords(font: Font): PlainWords {
  const glyphOf = glyphAsker(font);
  const ask = kernAsker(font, glyphOf);
  const table = kerning[font.postscriptName];
  const known = new Set(table?.characters);
  const kernOf = (pair: string): number | undefined =>
    known.has(pair.charAt(0)) && known.has(pair.charAt(1)) ? (table?.pairs[pair] ?? 0) : ask(pair);

  return (word) => {
    if (!plain.test(word)) return undefined;
    const shaped: ShapedGlyph[] = [];
    for (let index = 0; index < word.length; index += 1) {
      const glyph = glyphOf(word.charAt(index));
      const kern = index + 1 === word.length ? 0 : kernOf(word.slice(index, index + 2));
      if (glyph === undefined || kern === undefined) return undefined;
      shaped.push(kern === 0 ? glyph : { ...glyph, kern });
    }
    return shaped;
  };
}

type GlyphOf = (character: string) => ShapedGlyph | undefined;

function glyphAsker(font: Font): GlyphOf {
  const scale = 1000 / font.unitsPerEm;
  const glyphs = new Map<string, ShapedGlyph | undefined>();
  return (character) => {
    if (glyphs.has(character)) return glyphs.get(character);
    const [glyph, more] = font.hasGlyphForCodePoint(character.charCodeAt(0)) ? font.layout(character).glyphs : [];
    const alone = glyph === undefined || more !== undefined ? undefined : glyph;
    // The character itself, not what the font says: it forgets the characters of a glyph first met as part of another.
    const codePoints = [character.charCodeAt(0)];
    const made = alone && { id: alone.id, width: alone.advanceWidth * scale, kern: 0, codePoints };
    glyphs.set(character, made);
    return made;
  };
}

/** Asks the font what stands between two characters besides their widths; undefined when the two are not set as two. */
export function kernAsker(font: Font, glyphOf: GlyphOf = glyphAsker(font)): (pair: string) => number | undefined {
  const scale = 1000 / font.unitsPerEm;
  const pairs = new Map<string, number | undefined>();
  return (pair) => {
    if (pairs.has(pair)) return pairs.get(pair);
    const run = font.layout(pair);
    const [first, second] = run.glyphs;
    const isTwo =
      run.glyphs.length === 2 &&
      first?.id === glyphOf(pair.charAt(0))?.id &&
      second?.id === glyphOf(pair.charAt(1))?.id;
    const advance = run.positions[0]?.xAdvance;
    const kern =
      isTwo && first !== undefined && advance !== undefined ? advance * scale - first.advanceWidth * scale : undefined;
    pairs.set(pair, kern);
    return kern;
  };
}
