// Cells measured once: the words of their texts, the narrowest they can be, and the width they would like.
import { least, text as textType, tickBox, writeBox, type TypeSize } from '../scale.ts';
import type { Setting } from '../setting.ts';
import { widthOf } from '../setting.ts';
import { words, type Word } from '../words.ts';
import type { CellModel, ColumnModel, RowModel, TableModel } from './model.ts';

export interface MeasuredPart {
  readonly words: readonly Word[];
  readonly type: TypeSize;
  /** Widest word and whole length, in points. */
  readonly widest: number;
  readonly whole: number;
}
export interface MeasuredCell {
  readonly cell: CellModel;
  readonly parts: readonly MeasuredPart[];
}
/** A row of measured cells, or a line across. */
export type MeasuredRow =
  | {
      readonly kind: 'cells';
      readonly cells: readonly MeasuredCell[];
      readonly row: Extract<RowModel, { kind: 'cells' }>;
    }
  | { readonly kind: 'band'; readonly row: Extract<RowModel, { kind: 'band' }> };

export interface ColumnNeed {
  readonly least: number;
  readonly likes: number;
  /** Only ticks: never wider than it must be. */
  readonly ticks: boolean;
  /** Has boxes to tick or to write in. */
  readonly boxed: boolean;
  /** Has lines to write on. */
  readonly written: boolean;
  /** Lengths of its texts, row by row, in the rows that the widths are judged by. */
  readonly texts: readonly number[];
}

/** A word may ask for this share of the table at most; longer ones are broken. */
const widestShare = 0.34;

/** So many rows are looked at to share out the room. */
const judged = 40;

export function measureRows(table: TableModel, setting: Setting): readonly MeasuredRow[] {
  return table.rows.map((row) => {
    if (row.kind === 'band') return { kind: 'band' as const, row };
    return { kind: 'cells' as const, cells: row.cells.map((cell) => measureCell(cell, setting)), row };
  });
}

function measureCell(cell: CellModel, setting: Setting): MeasuredCell {
  const parts = cell.parts.map((part) => {
    const type = part.type ?? textType;
    const face = part.face ?? 'regular';
    const found = words(part.text, face, setting.measure, setting.links);
    const spaces = Math.max(0, found.length - 1) * setting.measure.width(' ', face);
    const widest = found.reduce((most, word) => Math.max(most, word.em), 0) * type.size;
    const whole = (found.reduce((sum, word) => sum + word.em, 0) + spaces) * type.size;
    return { words: found, type, widest, whole };
  });
  return { cell, parts };
}

/** What every column needs, from its head and all its cells. */
export function columnNeeds(table: TableModel, rows: readonly MeasuredRow[], setting: Setting): readonly ColumnNeed[] {
  return table.columns.map((column, index) => columnNeed(column, index, rows, setting));
}

function columnNeed(column: ColumnModel, index: number, rows: readonly MeasuredRow[], setting: Setting): ColumnNeed {
  const most = setting.width * widestShare;
  const headWords = words(column.head, 'regular', setting.measure, setting.links);
  let narrow = Math.min(most, headWords.reduce((widest, word) => Math.max(widest, word.em), 0) * least.size);
  let likes = Math.min(narrow * 2, widthOf(column.head, least, setting));
  let written = false;
  let boxed = false;
  let ticks = rows.some((row) => row.kind === 'cells');
  for (const row of rows) {
    const measured = row.kind === 'cells' ? row.cells[index] : undefined;
    if (measured === undefined) continue;
    const beside = boxRoom(measured.cell, setting);
    const widest = measured.parts.reduce((wide, part) => Math.max(wide, part.widest), 0);
    const whole = measured.parts.reduce((wide, part) => Math.max(wide, part.whole), 0);
    narrow = Math.max(narrow, withBox(measured.cell, Math.min(most, widest), beside));
    likes = Math.max(likes, withBox(measured.cell, whole, beside));
    if (measured.cell.box === 'line') written = true;
    else if (measured.cell.box !== undefined) boxed = true;
    if (measured.cell.box !== 'tick' || measured.parts.length > 0) ticks = false;
  }
  return { least: narrow, likes: Math.max(narrow, likes), ticks, boxed, written, texts: lengths(rows, index) };
}

/** Lengths of the texts of a column in the first rows. */
function lengths(rows: readonly MeasuredRow[], index: number): readonly number[] {
  return rows.slice(0, judged).map((row) => {
    const parts = row.kind === 'cells' ? (row.cells[index]?.parts ?? []) : [];
    return parts.reduce((sum, part) => sum + part.whole, 0);
  });
}

/** Room that the box of a cell and its unit take. */
export function boxRoom(cell: CellModel, setting: Setting): number {
  if (cell.box === 'tick') return tickBox;
  if (cell.box === 'line') return 60;
  if (cell.box !== 'write') return 0;
  return writeBox.width + (cell.unit === undefined ? 0 : 4 + Math.min(60, widthOf(cell.unit, textType, setting)));
}

/** Text stands beside a tick box, above a box to write in. */
function withBox(cell: CellModel, textWidth: number, box: number): number {
  if (cell.box === 'tick') return textWidth === 0 ? box : box + 5 + textWidth;
  return Math.max(textWidth, box);
}
