// Cards of tags and labels, each with its lines and, where it has one, its square code.
import type { CardsBlock } from '../../sheet/sheet.ts';
import { cardShape } from '../card-shape.ts';
import { escapeHtml } from '../escape.ts';
import type { Scope } from '../scope.ts';
import { squareCodeSvg } from '../square-code.ts';
import { textHtml } from '../text-html.ts';

/** The cards as a list. */
export function cardsHtml({ size, hole, cards }: CardsBlock, scope: Scope): string {
  let html = `<ul class="cards ${cardShape(size)}">\n`;
  for (const card of cards) html += cardHtml(card, hole, scope);
  return `${html}</ul>\n`;
}

function cardHtml({ title, lines, code, foot }: CardsBlock['cards'][number], hole: boolean, scope: Scope): string {
  let html = `<li class="card">\n${hole ? '<span class="hole"></span>\n' : ''}<p class="title">${escapeHtml(title)}</p>\n`;
  for (const line of lines) html += `<p>${textHtml(line, scope)}</p>\n`;
  if (code !== undefined && code !== '') html += `${squareCodeSvg(code)}\n<p class="code">${escapeHtml(code)}</p>\n`;
  if (foot !== undefined && foot !== '') html += `<p class="foot">${escapeHtml(foot)}</p>\n`;
  return `${html}</li>\n`;
}
