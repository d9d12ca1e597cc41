// A caution by its grade, as a line of its own.
import type { Grade } from '../../sheet/sheet.ts';
import { escapeHtml } from '../escape.ts';

/** The line, with its grade as the first word. */
export function cautionHtml({ grade, text }: { readonly grade: Grade; readonly text: string }): string {
  return `<p class="caution grade-${grade.toLowerCase()}" role="note"><strong>${grade}</strong> ${escapeHtml(text)}</p>\n`;
}
