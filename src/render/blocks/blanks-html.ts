// The measuring table: one item a row, with the columns that at least one row fills, and two boxes to write in.
import type { BlankRow, BlanksBlock } from '../../sheet/sheet.ts';
import { columnsInUse, withWhat, type ColumnsInUse } from '../blank-columns.ts';
import { writeHtml } from '../cell-html.ts';
import { escapeHtml } from '../escape.ts';
import type { Scope } from '../scope.ts';
import { textHtml } from '../text-html.ts';

/** Columns before the two boxes, as they follow each other. */
const before = [
  ['position', 'Where'],
  ['standard', 'Standard'],
  ['limit', 'Limit'],
  ['last', 'Last time'],
  ['expected', 'To be expected'],
] as const;

/** The table, or what stands in its place where nothing is to be measured. */
export function blanksHtml({ items, empty }: BlanksBlock, scope: Scope): string {
  if (items.length === 0) return `<p class="empty">${escapeHtml(empty)}</p>\n`;
  const used = columnsInUse(items);
  let html =
    '<div class="wide" tabindex="0" role="group" aria-label="Readings to take"><table class="blanks work stacks">\n' +
    '<thead><tr><th scope="col">Item</th>';
  for (const [name, head] of before) if (used[name]) html += `<th scope="col">${head}</th>`;
  html += '<th scope="col">Found</th><th scope="col">Left</th>';
  html += `${used.verdict ? '<th scope="col">Verdict</th>' : ''}</tr></thead>\n<tbody>\n`;
  for (const item of items) html += rowHtml(item, used, scope);
  return `${html}</tbody>\n</table></div>\n`;
}

function rowHtml(item: BlankRow, used: ColumnsInUse, scope: Scope): string {
  const { id, unit, note } = item;
  const how = withWhat(item);
  let html = `<tr data-blank="${escapeHtml(id)}"><th scope="row">${textHtml(item.item, scope)}`;
  if (how !== '') html += ` <span class="note">${escapeHtml(how)}</span>`;
  if (note !== undefined && note !== '') html += ` <span class="note">${textHtml(note, scope)}</span>`;
  html += '</th>';
  for (const [name, head] of before) if (used[name]) html += cellHtml(head, item[name]);
  html += `<td data-head="Found">${writeHtml(escapeHtml(item.found ?? ''), unit)}</td>`;
  html += `<td data-head="Left">${writeHtml(escapeHtml(item.left ?? ''), unit)}</td>`;
  return `${html}${used.verdict ? cellHtml('Verdict', item.verdict) : ''}</tr>\n`;
}

function cellHtml(head: string, text = ''): string {
  return `<td data-head="${head}">${escapeHtml(text)}</td>`;
}
