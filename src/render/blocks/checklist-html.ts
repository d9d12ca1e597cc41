// A checklist: each line with its tick, what is to be seen, why, and a value to write beside it.
import type { ChecklistBlock } from '../../sheet/sheet.ts';
import { tickHtml, writeHtml } from '../cell-html.ts';
import { escapeHtml } from '../escape.ts';
import type { Scope } from '../scope.ts';
import { textHtml } from '../text-html.ts';
import { cautionHtml } from './caution-html.ts';

type Item = ChecklistBlock['items'][number];

/** The list. What is done asks for no value any more. */
export function checklistHtml({ items }: ChecklistBlock, scope: Scope): string {
  let html = '<ul class="checklist">\n';
  for (const item of items) html += itemHtml(item, scope);
  return `${html}</ul>\n`;
}

function itemHtml(item: Item, scope: Scope): string {
  const { id, text, why, done, blank, state, caution } = item;
  const stands = state === undefined || state === '' ? '' : ` <span class="state">${textHtml(state, scope)}</span>`;
  return (
    `<li data-blank="${escapeHtml(id)}">\n${caution === undefined ? '' : cautionHtml(caution)}` +
    `<div class="check">${tickHtml(done === true)}<div class="what"><p>${textHtml(text, scope)}${stands}</p>\n` +
    (why === undefined || why === '' ? '' : `<p class="why">${textHtml(why, scope)}</p>\n`) +
    `</div>\n${blank === undefined || done === true ? '' : valueHtml(blank)}</div>\n</li>\n`
  );
}

function valueHtml({ unit, hint }: NonNullable<Item['blank']>): string {
  const beside = hint === undefined || hint === '' ? '' : ` <span class="hint">${escapeHtml(hint)}</span>`;
  return `<p class="value">${writeHtml('', unit)}${beside}</p>\n`;
}
