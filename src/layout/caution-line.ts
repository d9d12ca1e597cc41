// A caution in one of three grades, told apart by word and shape: a frame, a bar, a thin line. Never by colour.
import type { Grade, Text } from '../sheet/sheet.ts';
import type { PlacedItem, Tag } from './placed.ts';
import { text as textType } from './scale.ts';
import { heightOf, setLines, type SetLine } from './set-line.ts';
import { linesOf, type Setting } from './setting.ts';
import type { Slab } from './slab.ts';

const inset = 10;
const padding = 4;

/** The caution as one slab, or as several where it is taller than `most`. */
export function* cautionSlab(grade: Grade, text: Text, setting: Setting, tag: Tag, most: number): Generator<Slab> {
  const inlines = typeof text === 'string' ? [text] : text;
  const lines = linesOf(
    [{ kind: 'strong', text: grade }, '\u00a0 ', ...inlines],
    textType,
    setting.width - 2 * inset,
    setting,
  );
  const count = Math.max(1, Math.floor((most - 2 * padding - 8) / textType.leading));
  for (let from = 0; from < lines.length; from += count) {
    const part = lines.slice(from, from + count);
    yield {
      height: heightOf(part) + 2 * padding,
      draw: (x, y, out) => drawCaution(grade, part, { x, y, width: setting.width }, tag, out),
    };
  }
}

interface Where {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

function drawCaution(grade: Grade, lines: readonly SetLine[], where: Where, tag: Tag, out: PlacedItem[]): void {
  const { x, y, width } = where;
  const height = heightOf(lines) + 2 * padding;
  if (grade === 'WARNING') {
    out.push({ kind: 'box', x: x + 0.6, y, width: width - 1.2, height, weight: 1.2, use: 'frame' });
  } else {
    out.push({ kind: 'fill', x, y, width: grade === 'CAUTION' ? 3.5 : 0.7, height, grey: 1 });
  }
  setLines(lines, { x: x + inset, y: y + padding, width: width - 2 * inset, tag }, out);
}
