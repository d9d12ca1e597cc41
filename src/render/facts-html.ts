// Facts as names with their values: in one go, for every record begins with a dozen of them.
import type { FactsBlock, Text } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';
import { textHtml } from './text-html.ts';

/** Each fact as a pair of `dt` and `dd`, one on a line. */
export function factRowsHtml(facts: FactsBlock['facts'], scope: Scope): string {
  let html = '';
  for (const { name, value, note, lines } of facts) {
    const said = note === undefined || note === '' ? '' : ` <span class="note">${textHtml(note, scope)}</span>`;
    const told = lines === undefined ? textHtml(value, scope) : listHtml(lines, scope);
    html += `<div><dt>${escapeHtml(name)}</dt><dd>${told}${said}</dd></div>\n`;
  }
  return html;
}

function listHtml(lines: readonly Text[], scope: Scope): string {
  let html = '<ul>\n';
  for (const line of lines) html += `<li>${textHtml(line, scope)}</li>\n`;
  return `${html}</ul>`;
}
