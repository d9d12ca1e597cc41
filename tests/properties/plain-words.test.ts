// Plain words are put together from pairs; they must be what the font itself makes of them, glyph for glyph.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openFont, shape, shapeByFont } from '../../src/pdf/faces.ts';
import { plainWords } from '../../src/pdf/plain-words.ts';

const letters = Array.from({ length: 0x2027 - 0x20 + 1 }, (_, index) => String.fromCharCode(0x20 + index)).filter(
  (letter) => letter <= '\u00ff' || letter >= '\u2010',
);
const word = fc.array(fc.oneof(fc.constantFrom(...letters), fc.constantFrom(...Array.from('AVTWYLPFToevary.,-1/7'))), {
  minLength: 1,
  maxLength: 12,
});

describe.each(['regular', 'strong', 'em'] as const)('a plain word in %s', (face) => {
  test('is what the font makes of it', () => {
    const shaper = plainWords(openFont(face));
    let plain = 0;
    let kerned = 0;
    fc.assert(
      fc.property(word, (characters) => {
        const text = characters.join('');
        const glyphs = shaper(text);
        if (glyphs === undefined) return;
        plain += 1;
        if (glyphs.some((glyph) => glyph.kern !== 0)) kerned += 1;
        expect([{ font: face, glyphs }]).toEqual(shapeByFont(text, face).runs);
        expect(shape(text, face).em).toBeCloseTo(shapeByFont(text, face).em, 9);
      }),
      { numRuns: 1500 },
    );
    expect(plain).toBeGreaterThan(300);
    expect(kerned).toBeGreaterThan(100);
  });

  test.each(['a\u0301', '\u00ad', 'ж', '日', 'a\u200db', ''])('is not %j', (text) => {
    expect(plainWords(openFont(face))(text)).toBeUndefined();
  });
});
