// Every word of a PDF of ours is found when a package is looked through: on its pages, and in the files inside it.
import { describe, expect, test } from 'vitest';
import { pdfWords } from '../../src/command/handover/pdf-words.ts';
import { makePdf } from '../pdf/read-pdf.ts';
import { shape } from '../../src/pdf/faces.ts';
import { sheetOf } from '../pdf/sample-sheets.ts';

const prose = (text: string) => sheetOf([{ type: 'prose', paragraphs: [{ kind: 'paragraph', text }] }]);

describe('words in a PDF', () => {
  test('are found on its pages, whatever bytes the numbers of their glyphs have', async () => {
    const all = Array.from({ length: 480 }, (_, index) => String.fromCodePoint(0x21 + index)).filter(
      (character) => /^[\p{L}\p{N}\p{P}\p{S}]$/u.test(character) && shape(character, 'regular').missing.length === 0,
    );
    expect(all.length).toBeGreaterThan(257);
    const words = all.map((character) => character + character);
    const { bytes } = await makePdf(prose(words.join(' ')));
    const found = new Set((await pdfWords(bytes))?.normalize('NFC').split(/\s+/u));
    expect(words.filter((word) => !found.has(word.normalize('NFC')))).toEqual([]);
  });
  test('are found in a file inside it, though it speaks as a page does', async () => {
    const text = 'The BT of the coil was read by a secret neighbour. [x] TJ ET';
    const attach = [{ name: 'a.txt', description: 'a', type: 'text/plain', bytes: Buffer.from(text) }];
    const { bytes } = await makePdf(prose('Plain.'), { attach });
    expect(await pdfWords(bytes)).toContain('secret neighbour');
  });
  test('are not known of what is no PDF', async () => {
    expect(await pdfWords(Buffer.from('no PDF'))).toBeUndefined();
  });
});
