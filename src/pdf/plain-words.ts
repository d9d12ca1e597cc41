// Words of plain letters and signs, put together from glyphs and pairs that are asked of the font once: all that our fonts do to
// such a word is kerning, and that goes by pairs. Asking the font for every word is most of the cost of a first sheet.
import type { Font } from 'fontkit';
import type { ShapedGlyph } from './faces.ts';
import { kerning, type Kerning } from './kern-table.ts';

/** No mark that joins another character, no sign that is hidden, no script that is shaped by rules of its own. */
const plain = /^[\x20-\x7e\xa0-\xac\xae-\xff\u03a9\u2002\u2010-\u2027\u202f\u2080-\u2089\u2212]+$/u;

/** Shapes a word of plain characters; undefined for any other, which the font itself must shape. */
export type PlainWords = (word: string) => readonly ShapedGlyph[] | undefined;

/** For one font, which keeps what it was asked. */
export function plainWords(font: Font): PlainWords {
  const glyphOf = glyphAsker(font);
  const ask = kernAsker(font, glyphOf);
  const table = kerning[font.postscriptName];
  const known = table && knownKerns(table);

  return (word) => {
    if (!plain.test(word)) return undefined;
    const shaped: ShapedGlyph[] = [];
    for (let index = 0; index < word.length; index += 1) {
      const glyph = glyphOf(word.charAt(index));
      const kern = index + 1 === word.length ? 0 : (known?.(word, index) ?? ask(word.slice(index, index + 2)));
      if (glyph === undefined || kern === undefined) return undefined;
      const { id, width, codePoints } = glyph;
      shaped.push(kern === 0 ? glyph : { id, width, kern, codePoints });
    }
    return shaped;
  };
}

/** What stands behind the character at a place of a word; undefined where the table does not know the pair. */
type KnownKern = (word: string, index: number) => number | undefined;

/** The table by numbers: it is asked for every letter that is set, and a pair as a word of its own would have to be looked up as one. */
function knownKerns({ characters, pairs }: Kerning): KnownKern {
  const places = new Map(Array.from(characters, (character, place) => [character.charCodeAt(0), place]));
  const breadth = places.size;
  const kerns = new Float64Array(breadth * breadth);
  for (const [pair, kern] of Object.entries(pairs)) {
    const [first, second] = [places.get(pair.charCodeAt(0)), places.get(pair.charCodeAt(1))];
    if (first !== undefined && second !== undefined) kerns[first * breadth + second] = kern;
  }
  return (word, index) => {
    const first = places.get(word.charCodeAt(index));
    const second = places.get(word.charCodeAt(index + 1));
    return first === undefined || second === undefined ? undefined : kerns[first * breadth + second];
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
