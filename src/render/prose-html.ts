// The owner's paragraphs into HTML, written out by hand because every job page has them.
import type { Paragraph } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import { photoHtml } from './photo-html.ts';
import type { Scope } from './scope.ts';
import { textHtml } from './text-html.ts';

/** The HTML of paragraphs, one after the other. */
export function proseHtml(paragraphs: readonly Paragraph[], scope: Scope): string {
  let html = '';
  for (const paragraph of paragraphs) html += paragraphHtml(paragraph, scope);
  return html;
}

function paragraphHtml(paragraph: Paragraph, scope: Scope): string {
  switch (paragraph.kind) {
    case 'paragraph':
      return `<p>${textHtml(paragraph.text, scope)}</p>\n`;
    case 'heading': {
      // Headings of the owner's own words stand below every heading of the sheet.
      const level = scope.headingLevel(3 + paragraph.level);
      return `<h${level}>${textHtml(paragraph.text, scope)}</h${level}>\n`;
    }
    case 'list':
      return listHtml(paragraph, scope);
    case 'quote':
      return `<blockquote>${proseHtml(paragraph.paragraphs, scope)}</blockquote>\n`;
    case 'code':
      return `<pre${isOneLine(paragraph.text) ? ' class="one"' : ' tabindex="0"'}><code>${escapeHtml(paragraph.text)}</code></pre>\n`;
    case 'table':
      return tableHtml(paragraph, scope);
    case 'photo':
      return photoHtml(paragraph.photo, scope);
  }
}

/** A line alone is set on several where it is long; only a text of lines moves sideways. */
function isOneLine(text: string): boolean {
  const end = text.indexOf('\n');
  return end === -1 || end === text.length - 1;
}

function listHtml(list: Extract<Paragraph, { kind: 'list' }>, scope: Scope): string {
  const element = list.ordered ? 'ol' : 'ul';
  let html = `<${element}>\n`;
  for (const item of list.items) html += `<li>${itemHtml(item, scope)}</li>\n`;
  return `${html}</${element}>\n`;
}

/** A list item of one plain paragraph is set without a paragraph of its own. */
function itemHtml(item: readonly Paragraph[], scope: Scope): string {
  const [first, ...rest] = item;
  if (first === undefined) return '';
  if (first.kind !== 'paragraph') return proseHtml(item, scope);
  return textHtml(first.text, scope) + (rest.length === 0 ? '' : `\n${proseHtml(rest, scope)}`);
}

function tableHtml(table: Extract<Paragraph, { kind: 'table' }>, scope: Scope): string {
  let html = '<div class="wide" tabindex="0" role="group" aria-label="Table"><table>\n<thead><tr>';
  for (const head of table.head) {
    const text = textHtml(head, scope);
    html += text === '' ? '<td></td>' : `<th scope="col">${text}</th>`;
  }
  html += '</tr></thead>\n<tbody>\n';
  for (const row of table.rows) {
    html += '<tr>';
    for (const cell of row) html += `<td>${textHtml(cell, scope)}</td>`;
    html += '</tr>\n';
  }
  return `${html}</tbody>\n</table></div>\n`;
}
