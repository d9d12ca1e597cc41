// One row set into its tiers: lines of text for every cell, and the height that the row takes.
import { breakLines } from '../lines.ts';
import {
  baseline,
  cardRow,
  leading,
  least,
  readRow,
  text as textType,
  tickBox,
  tickRow,
  workRow,
  writeBox,
} from '../scale.ts';
import { heightOf, type Align, type SetLine } from '../set-line.ts';
import { linesOf, type Setting } from '../setting.ts';
import type { ColumnPlace, Tier } from './columns.ts';
import type { CellModel, TableModel } from './model.ts';
import type { MeasuredCell, MeasuredRow } from './prepare.ts';

export interface SetCell {
  readonly cell: CellModel;
  readonly lines: readonly SetLine[];
  readonly column: number;
  readonly x: number;
  readonly width: number;
  readonly align: Align;
  /** The name of the column, where no head says it, and the room it has. */
  readonly label: readonly SetLine[];
  readonly labelRoom: number;
}
export interface SetTier {
  readonly cells: readonly SetCell[];
  readonly height: number;
  /** What it would be with one line in every cell: boxes stand in its middle. */
  readonly row: number;
  /** The common first baseline of its cells, below the top of the tier. */
  readonly base: number;
}

/** What a row is for: to be written in, to be ticked, to be read, or to stand on a card. */
export type RowUse = 'work' | 'tick' | 'read' | 'card';

/** White space above and below the text of a row. */
export function rowPadding(use: RowUse): number {
  if (use === 'work' || use === 'tick') return use === 'work' ? 5 : 4;
  return use === 'card' ? 1 : (readRow - leading) / 2;
}

/** Breaks the texts of a row into the widths of its columns. */
export function setRow(
  row: Extract<MeasuredRow, { kind: 'cells' }>,
  tiers: readonly Tier[],
  table: TableModel,
  setting: Setting,
): readonly SetTier[] {
  return tiers.map((tier, at) => {
    const cells = tier.map((place, inTier): SetCell => {
      const measured = row.cells[place.index] ?? { cell: { parts: [] }, parts: [] };
      const beside = measured.cell.box === 'tick' ? tickBox + 5 : 0;
      const runsOn = mayRunOn(table, place) && tier.slice(inTier + 1).every(({ index }) => isEmpty(row.cells[index]));
      const room = runsOn ? setting.width - place.x : place.width;
      const lines = cellLines(measured, room - beside, setting);
      const labelled = place.label > 0 && (lines.length > 0 || measured.cell.box !== undefined);
      const head = table.columns[place.index];
      return {
        cell: measured.cell,
        lines,
        column: place.index,
        x: place.x,
        width: place.width,
        align: place.label > 0 ? 'left' : (head?.align ?? 'left'),
        label: labelled ? linesOf(head?.head ?? '', least, place.label - 4, setting).slice(0, 1) : [],
        labelRoom: place.label,
      };
    });
    const empty = at > 0 && cells.every((cell) => cell.lines.length === 0 && cell.cell.box === undefined);
    return empty
      ? { cells, base: 0, height: 0, row: 0 }
      : tierOf(cells, at === 0 ? useOf(table) : table.card === true ? 'card' : 'read');
  });
}

/** What is to be done is set over the columns to its right where its row has nothing in them: fewer lines, fewer pages. */
function mayRunOn(table: TableModel, { index, label }: ColumnPlace): boolean {
  return table.work && table.uprights !== true && label === 0 && table.columns[index]?.align === 'left';
}

function isEmpty(measured: MeasuredCell | undefined): boolean {
  if (measured === undefined) return true;
  const { parts, box, id, value } = measured.cell;
  return parts.length === 0 && box === undefined && id === undefined && value === undefined;
}

/** A list to tick off has no room beside its words to write in. */
export function useOf(table: TableModel): RowUse {
  if (table.work) return table.reads === 'list' ? 'tick' : 'work';
  return table.card === true ? 'card' : 'read';
}

function cellLines(measured: MeasuredCell, width: number, setting: Setting): readonly SetLine[] {
  return measured.parts.flatMap(({ words, type }) =>
    breakLines(words, Math.max(width, 10) / type.size, setting.measure).map((line) => ({ line, type })),
  );
}

/** A tier of cells: all first lines stand on one baseline; the tallest cell gives the height. */
export function tierOf(cells: readonly SetCell[], use: RowUse): SetTier {
  const row = rowOf(cells, use);
  const base = cells.reduce((most, cell) => Math.max(most, cellTop(cell, use, row) + firstBase(cell)), 0);
  return { cells, base, row, height: cells.reduce((most, cell) => Math.max(most, cellHeight(cell, use, base)), row) };
}

function rowOf(cells: readonly SetCell[], use: RowUse): number {
  if (use === 'tick')
    return cells.every(({ cell }) => cell.box === undefined || cell.box === 'tick') ? tickRow : workRow;
  if (use === 'work' || cells.some(({ cell }) => cell.box !== undefined)) return workRow;
  return use === 'card' ? cardRow : readRow;
}

function firstBase(set: SetCell): number {
  const first = set.lines[0] ?? set.label[0];
  return first === undefined ? 0 : baseline(first.type);
}

/** Text that is lower than the row stands in its middle. */
function cellTop(set: SetCell, use: RowUse, row: number): number {
  return Math.max(rowPadding(use), (row - heightOf(set.lines)) / 2);
}

function cellHeight(set: SetCell, use: RowUse, base: number): number {
  const textHeight = heightOf(set.lines);
  const top = textHeight === 0 ? 0 : base - firstBase(set);
  const plain = top + textHeight + rowPadding(use);
  if (set.cell.box !== 'write' || textHeight === 0) return plain;
  return plain + writeBox.height + 1;
}

/** Parts of a row too tall for a page: every part but the first says that it goes on. */
export function splitRow(
  tiers: readonly SetTier[],
  most: number,
  use: RowUse,
  setting: Setting,
): readonly (readonly SetTier[])[] {
  const whole = tiers.reduce((sum, tier) => sum + tier.height, 0);
  if (whole <= most) return [tiers];
  return tiers.flatMap((tier) => splitTier(tier, most, use, setting).map((part) => [part]));
}

function splitTier(tier: SetTier, most: number, use: RowUse, setting: Setting): readonly SetTier[] {
  if (tier.height <= most) return [tier];
  const parts: SetTier[] = [];
  const room = most - 2 * rowPadding(use) - writeBox.height - leading;
  let rest = tier.cells;
  while (rest.some((cell) => cell.lines.length > 0)) {
    const taken = rest.map((cell) => fitting(cell.lines, room));
    const cells = rest.map((cell, index) => ({
      ...cell,
      cell: parts.length === 0 ? cell.cell : { parts: [] },
      label: parts.length === 0 ? cell.label : [],
      lines: [...(parts.length === 0 ? [] : goesOn(cell, setting)), ...cell.lines.slice(0, taken[index])],
    }));
    parts.push(tierOf(cells, use));
    rest = rest.map((cell, index) => ({ ...cell, lines: cell.lines.slice(taken[index]) }));
  }
  return parts;
}

/** How many lines fit into a height; always at least one, so that the work ends. */
function fitting(lines: readonly SetLine[], room: number): number {
  let height = 0;
  const count = lines.findIndex((line) => (height += line.type.leading) > room);
  return count === -1 ? lines.length : Math.max(1, count);
}

function goesOn(cell: SetCell, setting: Setting): readonly SetLine[] {
  return cell.lines.length === 0
    ? []
    : linesOf('continued', { ...textType, size: 9 }, Math.max(cell.width, 45), setting, 'em').slice(0, 1);
}
