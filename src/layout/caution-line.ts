// A caution in one of three grades, told apart by word and shape: a frame, a bar, a thin line. Never by colour.
import type { Grade, Text } from '../sheet/sheet.ts';
import type { PlacedItem, Tag } from './placed.ts';
import { least, text as ordinary } from './scale.ts';
import { heightOf, setLines, type SetLine } from './set-line.ts';
import { linesOf, type Setting } from './setting.ts';
import type { Slab } from './slab.ts';

const inset = 10;

/** The caution as one slab, or as several where it is taller than `most`. */
export function* cautionSlab(
  grade: Grade,
  text: Text,
  setting: Setting,
  tag: Tag,
  most: number,
  close = false,
): Generator<Slab> {
  const textType = close ? least : ordinary;
  const padding = close ? 1.5 : 4;
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
      draw: (x, y, out) => drawCaution(grade, part, { x, y, width: setting.width, padding }, tag, out),
    };
  }
}

interface Where {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly padding: number;
}

function drawCaution(grade: Grade, lines: readonly SetLine[], where: Where, tag: Tag, out: PlacedItem[]): void {
  const { x, y, width, padding } = where;
  const height = heightOf(lines) + 2 * padding;
  if (grade === 'WARNING') {
    out.push({ kind: 'box', x: x + 0.6, y, width: width - 1.2, height, weight: 1.2, use: 'frame' });
  } else {
    out.push({ kind: 'fill', x, y, width: grade === 'CAUTION' ? 3.5 : 0.7, height, grey: 1 });
  }
  setLines(lines, { x: x + inset, y: y + padding, width: width - 2 * inset, tag }, out);
}
