// Lines to sign on: who, a name and a day.
import type { SignatureBlock } from '../../sheet/sheet.ts';
import { escapeHtml } from '../escape.ts';

/** Each line with what is signed already. */
export function signatureHtml({ lines }: SignatureBlock): string {
  let html = '<dl class="signature">\n';
  for (const { role, name, date } of lines) {
    html +=
      `<div><dt>${escapeHtml(role)}</dt><dd>${lineHtml(name)}</dd>` +
      `<dt>Date</dt><dd class="date">${lineHtml(date)}</dd></div>\n`;
  }
  return `${html}</dl>\n`;
}

function lineHtml(written = ''): string {
  return `<span class="line">${escapeHtml(written)}</span>`;
}
