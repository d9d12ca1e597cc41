// The kerning that the package carries is what the fonts themselves say.
import { fileURLToPath } from 'node:url';
import { openSync } from 'fontkit';
import { expect, it } from 'vitest';
import { kernAsker } from '../../src/pdf/plain-words.ts';
import { kerningOf } from '../../src/tools/kerning.ts';

const folder = fileURLToPath(new URL('../../src/pdf/fonts/', import.meta.url));
const table = kerningOf(folder);

it.each(['regular', 'semibold', 'italic'])('has the pairs of the %s face', (face) => {
  const font = openSync(`${folder}splitpin-sans-${face}.ttf`);
  const known = table[font.postscriptName];
  const ask = kernAsker(font);
  expect(known?.pairs['To']).toBeLessThan(0);
  for (const pair of ['To', 'AV', 'r.', 'oo', '10', 'Ye', 'P,', '“A', '3°'])
    if (Array.from(pair).every((one) => known?.characters.includes(one) === true))
      expect([pair, known?.pairs[pair] ?? 0]).toEqual([pair, ask(pair)]);
});

it('knows letters and digits, and is the same each time', () => {
  for (const { characters } of Object.values(table)) expect(characters).toMatch(/0.*9.*A.*Z.*a.*z/);
  expect(kerningOf(folder)).toEqual(table);
});
