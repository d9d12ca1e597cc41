// The heads and rows of tables, written out by hand because every page has them.
import type { Cell, Column, GridBlock, Row, TableBlock } from '../sheet/sheet.ts';
import { cellSettings, cellsHtml, type CellSetting } from './cell-html.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';
import { plainText, textHtml } from './text-html.ts';

/** A table below its caption, or what stands in its place where it has no rows. */
export function tableHtml(block: TableBlock, scope: Scope): string {
  const { caption, columns, rows, empty } = block;
  const folded = stacks(block);
  if (rows.length > 0)
    return framed(tableClass(block, folded), caption, 'Table', columns, rowsHtml(block, folded, scope));
  const named = hasWords(caption) ? `<p class="caption">${escapeHtml(caption)}</p>\n` : '';
  return `${named}<p class="empty">${escapeHtml(empty)}</p>\n`;
}

/** A grid to write in. */
export function gridHtml(block: GridBlock, scope: Scope): string {
  return framed('grid work', block.caption, 'Grid to write in', block.columns, gridRowsHtml(block, scope));
}

/** What is broader than a screen moves sideways by itself, and says what it is to who cannot see it. */
function framed(
  classes: string,
  caption: string | undefined,
  label: string,
  columns: readonly Column[],
  rows: string,
): string {
  const named = hasWords(caption) ? escapeHtml(caption) : '';
  return (
    `<div class="wide" tabindex="0" role="group" aria-label="${named === '' ? label : named}"><table class="${classes}">\n` +
    `${named === '' ? '' : `<caption>${named}</caption>\n`}<thead><tr>${headsHtml(columns)}</tr></thead>\n` +
    `<tbody>\n${rows}</tbody>\n</table></div>\n`
  );
}

function hasWords(caption: string | undefined): caption is string {
  return caption !== undefined && caption !== '';
}

/** The head cells of a table; a column without a head gets an empty cell, since an empty heading would be read aloud. */
function headsHtml(columns: readonly Column[]): string {
  let html = '';
  for (const column of columns) {
    const align = column.align === undefined || column.align === 'left' ? '' : ` class="${column.align}"`;
    html += column.head === '' ? '<td></td>' : `<th scope="col"${align}>${escapeHtml(column.head)}</th>`;
  }
  return html;
}

/** A cell of so many letters takes more than two lines of a third of a telephone. */
const long = 48;
/** Numbers and what is like them keep to one line: so many letters leave no room beside them. */
const longNumber = 16;
/** Of a table of more cells the heads in each would take more than the table; it moves sideways, and says so. */
const mostCells = 1000;
/** A cell of so many letters is a sentence, and no name of its row. */
const sentence = 90;

/**
 * Whether a table is set line under line where the screen is narrow: from four columns on always, one of three where a
 * cell of it would be a narrow column of words.
 */
function stacks({ columns, rows }: TableBlock): boolean {
  if (columns.length * rows.length > mostCells) return false;
  if (columns.length !== 3) return columns.length > 3;
  return rows.some(
    (row) =>
      row.kind === 'cells' &&
      row.cells.some((cell, at) => letters(cell) >= (columns[at]?.align === 'right' ? longNumber : long)),
  );
}

function letters({ text = '' }: Cell): number {
  return typeof text === 'string' ? text.length : plainText(text).length;
}

/** Class of a table by its use and breadth, and how its first column is read. On the screen a card is read like any table. */
function tableClass({ use, columns, rows }: TableBlock, folded: boolean): string {
  const shown = use === 'card' ? 'read' : use;
  const few = columns.length < 4 ? ' few' : '';
  if (!folded) return `${shown}${few}${columns.length > 3 ? ' sideways' : ''}`;
  const told = columns.length === 3 && rows.some(isTold);
  return `${shown}${few} stacks${told ? ' told' : ''}`;
}

/** Whether the row begins with a sentence. */
function isTold(row: Row): boolean {
  return row.kind === 'cells' && row.cells[0] !== undefined && letters(row.cells[0]) >= sentence;
}

/** Body rows. A band goes across all columns. */
function rowsHtml({ rows, columns }: TableBlock, folded: boolean, scope: Scope): string {
  const settings = cellSettings(columns, folded);
  let html = '';
  for (const row of rows)
    html += row.kind === 'band' ? bandHtml(row, columns.length, scope) : rowHtml(row, settings, scope);
  return html;
}

function rowHtml(row: Extract<Row, { kind: 'cells' }>, settings: readonly CellSetting[], scope: Scope): string {
  const id = row.id === undefined ? '' : ` id="${escapeHtml(row.id)}"`;
  return `<tr${id}>${cellsHtml(row.cells, settings, scope)}</tr>\n`;
}

function bandHtml(row: Extract<Row, { kind: 'band' }>, across: number, scope: Scope): string {
  const text = textHtml(row.text, scope);
  if (row.grade === undefined) return `<tr class="band"><td colspan="${across}">${text}</td></tr>\n`;
  const grade = `<strong>${row.grade}</strong> `;
  return `<tr class="band"><td colspan="${across}"><p class="caution grade-${row.grade.toLowerCase()}">${grade}${text}</p></td></tr>\n`;
}

/** The rows of a grid to write in: what is already written first, then empty ones. */
function gridRowsHtml({ columns, rows, filled }: GridBlock, scope: Scope): string {
  const settings = cellSettings(columns, false);
  let html = '';
  for (let index = 0; index < rows; index += 1) {
    const cells = columns.map((_, column) => ({ text: filled?.[index]?.[column] ?? '' }));
    html += `<tr>${cellsHtml(cells, settings, scope)}</tr>\n`;
  }
  return html;
}
