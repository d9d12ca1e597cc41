// Table cells and the boxes in them. Boxes and ticks are drawn by the stylesheet, never typed.
import type { Cell, Column } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';
import { textHtml } from './text-html.ts';

/** How the cells of a column are set: worked out once for all its rows. */
export interface CellSetting {
  /** The beginning of a cell in one piece, for it stands in every row. */
  readonly begin: string;
  readonly align: string;
  /** The head of the column as an attribute, where narrow screens show it in the cell. */
  readonly head: string;
}

const unknown: CellSetting = { begin: '<td>', align: 'left', head: '' };

/** Settings of the columns of a table. */
export function cellSettings(columns: readonly Column[], withHeads: boolean): readonly CellSetting[] {
  return columns.map(({ head, align = 'left' }, at) => {
    const told = withHeads && head !== '' && !leads(columns, at) ? ` data-head="${escapeHtml(head)}"` : '';
    return { begin: beginOf(align === 'left' ? '' : align, told), align, head: told };
  });
}

function beginOf(classes: string, head: string): string {
  return ['<td', classes === '' ? '' : ` class="${classes}"`, head, '>'].join('');
}

/** The first column has its head above the table, and what a tick is for stands beside it: neither needs it in every cell. */
function leads(columns: readonly Column[], at: number): boolean {
  const isTick = (one: Column | undefined): boolean => one?.align === 'centre';
  if (at === 0) return !isTick(columns[0]);
  const align = columns[1]?.align;
  return at === 1 && isTick(columns[0]) && align !== 'centre' && align !== 'right';
}

/** The cells of one row as `td` elements; a column's alignment is a class. */
export function cellsHtml(cells: readonly Cell[], settings: readonly CellSetting[], scope: Scope): string {
  let html = '';
  let index = 0;
  for (const cell of cells) {
    html += cellHtml(cell, settings[index] ?? unknown, scope);
    index += 1;
  }
  return html;
}

function cellHtml(cell: Cell, { begin, align, head }: CellSetting, scope: Scope): string {
  const text =
    (cell.shows === undefined ? '' : previewHtml(cell.shows, scope)) +
    (cell.text === undefined ? '' : textHtml(cell.text, scope));
  const inside = cell.box === undefined ? text : boxHtml(cell, text);
  if (inside === '') return '<td></td>';
  const begun = cell.big === true ? beginOf(align === 'left' ? 'big' : `${align} big`, head) : begin;
  return `${begun}${inside}</td>`;
}

/** The small picture of a sheet, leading to the same at its full size; A4 or nearly so, which keeps its place while it is loaded. */
function previewHtml({ sheet, alt }: NonNullable<Cell['shows']>, scope: Scope): string {
  const pdf = scope.link(`print:${sheet}`);
  if (pdf === undefined) return '';
  const picture = escapeHtml(pdf.replace(/\.pdf$/, '.svg'));
  const image = `<img src="${picture}" alt="${escapeHtml(alt)}" width="120" height="170" loading="lazy">`;
  return `<a class="side" href="${picture}">${image}</a>`;
}

function boxHtml(cell: Cell, text: string): string {
  if (cell.box === 'tick') return tickHtml(cell.done === true) + (text === '' ? '' : ` ${text}`);
  if (cell.box === 'line') return `<span class="line">${text}</span>`;
  return writeHtml(text === '' ? escapeHtml(cell.written ?? '') : text, cell.unit);
}

/** A tick box. It is named for who cannot see it. */
export function tickHtml(done: boolean): string {
  return done
    ? '<span class="tick done" role="img" aria-label="ticked"></span>'
    : '<span class="tick" role="img" aria-label="to tick"></span>';
}

/** A box to write one number in, with the unit behind it; or with what is already written (HTML), which says its own. */
export function writeHtml(text: string, unit: string | undefined): string {
  const box =
    text === ''
      ? '<span class="write" role="img" aria-label="to fill in"></span>'
      : `<span class="write">${text}</span>`;
  const behind =
    text !== '' || unit === undefined || unit === '' ? '' : ` <span class="unit">${escapeHtml(unit)}</span>`;
  return `<span class="blank">${box}${behind}</span>`;
}
