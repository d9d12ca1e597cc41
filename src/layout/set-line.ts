// A line put in its place: text items from its stretches, with the line through what is struck out.
import type { Line, Stretch } from './lines.ts';
import type { PlacedItem, Tag } from './placed.ts';
import { baseline, firm, type TypeSize } from './scale.ts';

export type Align = 'left' | 'right' | 'centre';

export interface SetLine {
  readonly line: Line;
  readonly type: TypeSize;
}

/** Height in points of lines set one under the other. */
export function heightOf(lines: readonly SetLine[]): number {
  return lines.reduce((sum, line) => sum + line.type.leading, 0);
}

/** Sets a line with its top at `y` into a column. */
function setLine(set: SetLine, place: Place, y: number, out: PlacedItem[]): void {
  const { size } = set.type;
  const slack = place.width - set.line.em * size;
  const start = place.x + (place.align === 'right' ? slack : place.align === 'centre' ? slack / 2 : 0);
  const base = y + baseline(set.type);
  const last = set.line.stretches.length - 1;
  for (const [index, stretch] of set.line.stretches.entries()) {
    const text = index === last && !stretch.mark ? stretch.text + ' ' : stretch.text;
    out.push(textItem(stretch, text, start, base, size, place.tag));
    if (!stretch.struck) continue;
    const from = start + stretch.at * size;
    const through = base - size * 0.26;
    out.push({
      kind: 'line',
      x1: from - 1,
      y1: through,
      x2: from + stretch.em * size + 1,
      y2: through,
      weight: firm,
      ...tagged(place.tag),
    });
  }
}

/** A column that begins at `x` and is `width` wide; `y` is the top of its first line. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly align?: Align;
  readonly tag?: Tag | undefined;
}

/** Sets lines one under the other; gives the y below the last. */
export function setLines(lines: readonly SetLine[], place: Place, out: PlacedItem[]): number {
  let y = place.y;
  for (const line of lines) {
    setLine(line, place, y, out);
    y += line.type.leading;
  }
  return y;
}

export function tagged(tag: Tag | undefined): { readonly tag?: Tag } {
  return tag === undefined ? {} : { tag };
}

function textItem(
  stretch: Stretch,
  text: string,
  start: number,
  y: number,
  size: number,
  tag: Tag | undefined,
): PlacedItem {
  return {
    kind: 'text',
    x: start + stretch.at * size,
    y,
    width: stretch.em * size,
    text,
    face: stretch.face,
    size,
    ...(stretch.mark ? {} : tagged(tag)),
    ...(stretch.link === undefined ? {} : { link: stretch.link }),
  };
}
