// One row set into its tiers: lines of text for every cell, and the height that the row takes.
import { breakLines } from '../lines.ts';
import { leading, readRow, text as textType, tickBox, workRow, writeBox } from '../scale.ts';
import { heightOf, type Align, type SetLine } from '../set-line.ts';
import { linesOf, type Setting } from '../setting.ts';
import type { Tier } from './columns.ts';
import type { CellModel, TableModel } from './model.ts';
import type { MeasuredCell, MeasuredRow } from './prepare.ts';

export interface SetCell {
  readonly cell: CellModel;
  readonly lines: readonly SetLine[];
  readonly column: number;
  readonly x: number;
  readonly width: number;
  readonly align: Align;
}
export interface SetTier {
  readonly cells: readonly SetCell[];
  readonly height: number;
}

/** White space above and below the text of a row. */
export function rowPadding(work: boolean): number {
  return work ? 5 : (readRow - leading) / 2;
}

/** Breaks the texts of a row into the widths of its columns. */
export function setRow(
  row: Extract<MeasuredRow, { kind: 'cells' }>,
  tiers: readonly Tier[],
  table: TableModel,
  setting: Setting,
): readonly SetTier[] {
  return tiers.map((tier) => {
    const cells = tier.map((place): SetCell => {
      const measured = row.cells[place.index] ?? { cell: { parts: [] }, parts: [] };
      const beside = measured.cell.box === 'tick' ? tickBox + 5 : 0;
      return {
        cell: measured.cell,
        lines: cellLines(measured, place.width - beside, setting),
        column: place.index,
        x: place.x,
        width: place.width,
        align: table.columns[place.index]?.align ?? 'left',
      };
    });
    return { cells, height: tierHeight(cells, table.work) };
  });
}

function cellLines(measured: MeasuredCell, width: number, setting: Setting): readonly SetLine[] {
  return measured.parts.flatMap(({ words, type }) =>
    breakLines(words, Math.max(width, 10) / type.size, setting.measure).map((line) => ({ line, type })),
  );
}

/** Height of a tier: the tallest of its cells, never under the row height of its kind. */
export function tierHeight(cells: readonly SetCell[], work: boolean): number {
  const least = work ? workRow : readRow;
  return cells.reduce((most, cell) => Math.max(most, cellHeight(cell, work)), least);
}

function cellHeight(set: SetCell, work: boolean): number {
  const textHeight = heightOf(set.lines);
  const plain = textHeight + 2 * rowPadding(work);
  if (set.cell.box === 'tick' || set.cell.box === 'line') return Math.max(plain, workRow);
  if (set.cell.box !== 'write') return plain;
  return textHeight === 0 ? workRow : plain + writeBox.height;
}

/** Parts of a row too tall for a page: every part but the first says that it goes on. */
export function splitRow(
  tiers: readonly SetTier[],
  most: number,
  work: boolean,
  setting: Setting,
): readonly (readonly SetTier[])[] {
  const whole = tiers.reduce((sum, tier) => sum + tier.height, 0);
  if (whole <= most) return [tiers];
  return tiers.flatMap((tier) => splitTier(tier, most, work, setting).map((part) => [part]));
}

function splitTier(tier: SetTier, most: number, work: boolean, setting: Setting): readonly SetTier[] {
  if (tier.height <= most) return [tier];
  const parts: SetTier[] = [];
  const room = most - 2 * rowPadding(work) - writeBox.height - leading;
  let rest = tier.cells;
  while (rest.some((cell) => cell.lines.length > 0)) {
    const taken = rest.map((cell) => fitting(cell.lines, room));
    const cells = rest.map((cell, index) => ({
      ...cell,
      cell: parts.length === 0 ? cell.cell : { parts: [] },
      lines: [...(parts.length === 0 ? [] : goesOn(cell, setting)), ...cell.lines.slice(0, taken[index])],
    }));
    parts.push({ cells, height: tierHeight(cells, work) });
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
