// Facts as names with their values: in one go, for every record begins with a dozen of them.
import type { FactsBlock } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';
import { textHtml } from './text-html.ts';

/** Each fact as a pair of `dt` and `dd`, one on a line. */
export function factRowsHtml(facts: FactsBlock['facts'], scope: Scope): string {
  let html = '';
  for (const { name, value, note } of facts) {
    const said = note === undefined || note === '' ? '' : ` <span class="note">${textHtml(note, scope)}</span>`;
    html += `<div><dt>${escapeHtml(name)}</dt><dd>${textHtml(value, scope)}${said}</dd></div>\n`;
  }
  return html;
}
