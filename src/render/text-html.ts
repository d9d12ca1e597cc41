// A line of text into HTML: emphasis, code, what is struck out, references inside the binder, and figures.
import type { Inline, Text } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import type { Scope } from './scope.ts';

const elements = { strong: 'strong', em: 'em', code: 'code', struck: 's' } as const;

/** The HTML of a text. Addresses outside the binder are shown as text, never linked. */
export function textHtml(text: Text, scope: Scope): string {
  if (typeof text === 'string') return escapeHtml(text);
  let html = '';
  for (const part of text) html += inlineHtml(part, scope);
  return html;
}

function inlineHtml(part: Inline, scope: Scope): string {
  if (typeof part === 'string') return escapeHtml(part);
  if (part.kind === 'link') return linkHtml(part.text, part.to, scope);
  if (part.kind === 'figure') return figureHtml(part, scope);
  const element = elements[part.kind];
  return `<${element}>${escapeHtml(part.text)}</${element}>`;
}

function linkHtml(text: string, to: string, scope: Scope): string {
  if (isOutside(to)) return text === to ? escapeHtml(text) : `${escapeHtml(text)} (${escapeHtml(to)})`;
  const href = scope.link(to);
  return href === undefined ? escapeHtml(text) : `<a href="${escapeHtml(href)}">${escapeHtml(text)}</a>`;
}

function isOutside(to: string): boolean {
  return to.startsWith('https:') || to.startsWith('http:') || to.startsWith('mailto:');
}

function figureHtml(part: Extract<Inline, { kind: 'figure' }>, scope: Scope): string {
  const href = part.to === undefined ? undefined : scope.link(part.to);
  const text = escapeHtml(part.text);
  const mark = part.mark === undefined ? '' : `<span class="mark">${escapeHtml(part.mark)}</span>`;
  const figure =
    href === undefined
      ? `<span class="figure">${text}</span>`
      : `<a class="figure" href="${escapeHtml(href)}">${text}</a>`;
  return mark === '' ? figure : `${figure} ${mark}`;
}

/** The text alone, without any markup: for labels and alternative texts. */
export function plainText(text: Text): string {
  return typeof text === 'string' ? text : text.map((part) => (typeof part === 'string' ? part : part.text)).join('');
}
