// A set row drawn: texts, boxes with their units, ticks, and the rule below.
import type { PlacedItem, Tag } from '../placed.ts';
import { baseline, big, firm, text as textType, thin, tickBox, workRow, writeBox } from '../scale.ts';
import { heightOf, setLines, tagged, type Place } from '../set-line.ts';
import { linesOf, type Setting } from '../setting.ts';
import { type SetCell, type SetTier } from './set-row.ts';

export interface RowStyle {
  readonly work: boolean;
  readonly width: number;
  readonly uprights: boolean;
  readonly setting: Setting;
  /** The tag of a cell by its column. */
  readonly tagOf: (column: number) => Tag | undefined;
}

/** Draws the tiers of a row one under the other, with a thin rule at the bottom. */
export function drawRow(tiers: readonly SetTier[], x: number, y: number, style: RowStyle, out: PlacedItem[]): void {
  let top = y;
  for (const tier of tiers) {
    for (const cell of tier.cells) drawCell(cell, x, top, tier, style, out);
    if (style.uprights) drawUprights(tier, x, top, out);
    top += tier.height;
  }
  out.push({ kind: 'line', x1: x, y1: top, x2: x + style.width, y2: top, weight: thin });
}

function drawCell(set: SetCell, x: number, y: number, tier: SetTier, style: RowStyle, out: PlacedItem[]): void {
  const tag = style.tagOf(set.column);
  const left = x + set.x;
  const { box } = set.cell;
  const before = out.length;
  const textHeight = heightOf(set.lines);
  const boxBelow = box === 'write' && textHeight > 0;
  const first = set.lines[0];
  const top = first === undefined ? y : y + tier.base - baseline(first.type);
  drawLabel(set, left, y, tier, tag, out);
  const beside = box === 'tick' ? tickBox + 5 : 0;
  const place: Place = {
    x: left + beside,
    y: top,
    width: set.width - beside,
    align: set.align,
    tag,
  };
  if (box === 'tick') drawTick(set, left, y + (tier.row - tickBox) / 2, tag, out);
  const below = setLines(set.lines, place, out);
  if (box === 'write') drawWrite(set, left, boxBelow ? below + 1 : y + (tier.row - writeBox.height) / 2, style, out);
  if ((box === 'line' || box === undefined) && set.cell.id !== undefined)
    out.push(
      set.cell.across === true
        ? acrossField(set.cell.id, set, left, y, style, tag)
        : lineField(set.cell.id, set, left, y, tag),
    );
  if (out.length === before && tag !== undefined) out.push({ kind: 'empty', tag });
}

/** The room to write in that a cell leaves beside its text; at the right end of it where the text takes it all. */
function lineField(id: string, set: SetCell, left: number, y: number, tag: Tag | undefined): PlacedItem {
  const taken = set.lines.reduce((most, { line, type }) => Math.max(most, line.em * type.size + 4), 0);
  const width = Math.max(set.width - taken, Math.min(28, set.width));
  const x = left + set.width - width;
  return { kind: 'field', id, x, y: y + 2, width, height: workRow - 4, ...tagged(tag) };
}

/** From the cell to the end of its row: a word with a letter in each square. */
function acrossField(
  id: string,
  set: SetCell,
  left: number,
  y: number,
  style: RowStyle,
  tag: Tag | undefined,
): PlacedItem {
  const width = style.width - set.x;
  return { kind: 'field', id, x: left, y: y + 2, width, height: workRow - 4, ...tagged(tag) };
}

/** The name of the column to the left of its cell, on the common baseline or level with the box. */
function drawLabel(
  set: SetCell,
  left: number,
  y: number,
  tier: SetTier,
  tag: Tag | undefined,
  out: PlacedItem[],
): void {
  const [label] = set.label;
  if (label === undefined) return;
  const base = set.lines.length > 0 ? tier.base : workRow / 2 + 3.5;
  setLines(
    [label],
    { x: left - set.labelRoom, y: y + base - baseline(label.type), width: set.labelRoom - 4, tag },
    out,
  );
}

function drawTick(set: SetCell, left: number, top: number, tag: Tag | undefined, out: PlacedItem[]): void {
  const alone = set.lines.length === 0 && set.align !== 'left';
  const x = alone ? left + (set.width - tickBox) / 2 : left;
  const id = set.cell.id === undefined ? {} : { id: set.cell.id };
  out.push({
    kind: 'box',
    x,
    y: top,
    width: tickBox,
    height: tickBox,
    weight: firm,
    use: 'tick',
    ...id,
    ...tagged(tag),
  });
  if (set.cell.done) out.push({ kind: 'tick', x, y: top, size: tickBox, ...tagged(tag) });
}

function drawWrite(set: SetCell, left: number, top: number, style: RowStyle, out: PlacedItem[]): void {
  const tag = style.tagOf(set.column);
  const { width, height } = writeBox;
  const id = set.cell.id === undefined ? {} : { id: set.cell.id };
  out.push({ kind: 'box', x: left, y: top, width, height, weight: firm, use: 'write', ...id, ...tagged(tag) });
  // What is written says its own unit.
  const isWritten = set.cell.value !== undefined && set.cell.value !== '';
  if (isWritten) drawValue(set.cell.value, left, top, style, tag, out);
  if (isWritten || set.cell.unit === undefined) return;
  const room = set.width - width - 4;
  const unit = linesOf(set.cell.unit, textType, Math.max(room, 8), style.setting).slice(0, 1);
  setLines(unit, { x: left + width + 4, y: top + (height - textType.leading) / 2, width: room, tag }, out);
}

/** A value already written: large if it fits into the box on one line, else small on two. */
function drawValue(
  value: string,
  left: number,
  top: number,
  style: RowStyle,
  tag: Tag | undefined,
  out: PlacedItem[],
): void {
  const { width, height } = writeBox;
  const large = linesOf(value, big, width - 6, style.setting);
  const lines =
    large.length === 1 ? large : linesOf(value, { size: 9, leading: 11.5 }, width - 6, style.setting).slice(0, 2);
  setLines(
    lines,
    { x: left + 3, y: top + (height - heightOf(lines)) / 2, width: width - 6, align: 'centre', tag },
    out,
  );
}

function drawUprights(tier: SetTier, x: number, top: number, out: PlacedItem[]): void {
  for (const cell of tier.cells.slice(1)) {
    const at = x + cell.x - 4;
    out.push({ kind: 'line', x1: at, y1: top, x2: at, y2: top + tier.height, weight: thin });
  }
}
