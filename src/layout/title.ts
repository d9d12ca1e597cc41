// The beginning of a sheet: its title, its square code, and what is missing from it.
import type { Sheet } from '../sheet/sheet.ts';
import { millimetre } from './paper.ts';
import { firm, half, leading, text as textType, title as titleType } from './scale.ts';
import { heightOf, setLines } from './set-line.ts';
import { linesOf, under, type Setting } from './setting.ts';
import type { Slab } from './slab.ts';
import { lineSlabs } from './blocks/prose.ts';
import { drawModules, squareCode } from './square-code.ts';
import { plainText } from './words.ts';

/** The title with the square code beside it; a long code needs more room than a short one. */
export function* titleSlabs(sheet: Sheet, setting: Setting): Generator<Slab> {
  const code = sheet.squareCode === undefined ? undefined : squareCode(sheet.squareCode, 22 * millimetre);
  const side = code?.side ?? 0;
  const width = setting.width - (side === 0 ? 0 : side + 8);
  const lines = linesOf(sheet.title, titleType, width, setting, 'strong').slice(0, 6);
  const tag = under(setting.section, 'H1');
  const entry = { title: plainText(sheet.title), depth: 1 };
  yield {
    height: Math.max(heightOf(lines) + half, side),
    keep: true,
    draw: (x, y, out) => {
      out.push({ kind: 'anchor', id: sheet.id, x, y, entry });
      setLines(lines, { x, y, width, tag }, out);
      if (code === undefined) return;
      drawModules(code, x + setting.width - side, y - 6, under(setting.section, 'Figure', { alt: code.alt }), out);
    },
  };
  if (sheet.leftOut.length > 0) yield* leftOutSlabs(sheet.leftOut, setting);
}

function* leftOutSlabs(sentences: readonly string[], setting: Setting): Generator<Slab> {
  const inner: Setting = { ...setting, width: setting.width - 14 };
  const texts = ['Left out of this sheet, because a record could not be read:', ...sentences];
  for (const [index, text] of texts.entries()) {
    const lines = linesOf(text, textType, inner.width, inner, index === 0 ? 'strong' : 'regular');
    for (const [at, slab] of lineSlabs(lines, inner, under(setting.section, 'P')).entries()) {
      yield {
        ...slab,
        keep: slab.keep === true || index === 0,
        before: index === 0 && at === 0 ? half : 0,
        draw: (x, y, out) => {
          out.push({ kind: 'line', x1: x + 2, y1: y, x2: x + 2, y2: y + leading, weight: firm * 2 });
          slab.draw(x + 14, y, out);
        },
      };
    }
  }
}
