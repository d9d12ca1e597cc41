// Asks the fonts beforehand for the kerning of every pair of common characters, so that a first sheet need not.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'esbuild';
import { openSync } from 'fontkit';
import type { Kerning } from '../pdf/kern-table.ts';
import { kernAsker } from '../pdf/plain-words.ts';

/** From the exclamation mark to the tilde, and what our own wording uses besides. */
const characters =
  Array.from({ length: 0x7e - 0x20 }, (_, index) => String.fromCharCode(0x21 + index)).join('') +
  '\u00a0\u202f°·×±²³–’“”…−Ω';

/** The table of every font of the folder that sets words. */
export function kerningOf(folder: string): Readonly<Record<string, Kerning>> {
  const files = readdirSync(folder).filter((name) => name.includes('-sans-') && name.endsWith('.ttf'));
  return Object.fromEntries(files.toSorted().map((file) => kerningIn(join(folder, file))));
}

function kerningIn(path: string): readonly [string, Kerning] {
  const font = openSync(path);
  const ask = kernAsker(font);
  const known = Array.from(characters).filter((one) => font.hasGlyphForCodePoint(one.charCodeAt(0)));
  const asked = known.map((first) => known.map((second) => [first + second, ask(first + second)] as const)).flat();
  // A character that is not always set by itself is left to the font.
  const odd = new Set(asked.flatMap(([pair, kern]) => (kern === undefined ? Array.from(pair) : [])));
  const pairs = asked.flatMap(([pair, kern]) => (kern === undefined || kern === 0 ? [] : [[pair, kern] as const]));
  const sure = known.filter((one) => !odd.has(one)).join('');
  return [font.postscriptName, { characters: sure, pairs: Object.fromEntries(pairs) }];
}

/** For the compiled program. */
export function kerningPlugin(folder: string): Plugin {
  return {
    name: 'kerning',
    setup(building) {
      building.onLoad({ filter: /pdf[\\/]kern-table\.ts$/ }, () => ({
        contents: `export const kerning = JSON.parse(${JSON.stringify(JSON.stringify(kerningOf(folder)))});`,
        loader: 'js',
      }));
    },
  };
}
