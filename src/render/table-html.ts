// The heads and rows of tables, written out by hand because every page has them.
import type { Cell, Column, GridBlock, Row, TableBlock } from '../sheet/sheet.ts';
import { cellSettings, cellsHtml, type CellSetting } from './cell-html.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';
import { plainText, textHtml } from './text-html.ts';

/** A table below its caption, or what stands in its place where it has no rows. */
export function tableHtml(block: TableBlock, scope: Scope): string {
  const { caption, columns, rows, empty } = block;
  if (rows.length > 0) return framed(tableClass(block), caption, 'Table', columns, rowsHtml(block, scope));
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

/** A cell of so many letters is a paragraph, for which a third of a telephone is too narrow. */
const paragraph = 90;

/** A table of so many rows is read through and not compared. */
const fewRows = 12;

/**
 * Whether a table is set line under line where the screen is narrow. A table to work from always is, from four columns on;
 * one to read only while a row is short, since many like rows are better compared side by side, moving sideways.
 * A broad one of few rows, with nothing to compare, is. One of three columns is where a cell of it is a paragraph.
 */
function stacks({ use, columns, rows }: TableBlock): boolean {
  if (columns.length === 3) return rows.some((row) => row.kind === 'cells' && row.cells.some(isParagraph));
  return columns.length >= 4 && (use === 'work' || columns.length < 8 || rows.length <= fewRows);
}

function isParagraph({ text = '' }: Cell): boolean {
  return text.length >= paragraph || (typeof text !== 'string' && plainText(text).length >= paragraph);
}

/** Class of a table by its use and breadth. On the screen a card is read like any table. */
function tableClass(block: TableBlock): string {
  const use = block.use === 'card' ? 'read' : block.use;
  const few = block.columns.length < 4 ? ' few' : '';
  return `${use}${few}${stacks(block) ? ' stacks' : ''}`;
}

/** Body rows. A band goes across all columns. */
function rowsHtml(block: TableBlock, scope: Scope): string {
  const { rows, columns } = block;
  const settings = cellSettings(columns, stacks(block));
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
