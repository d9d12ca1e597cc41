// Text into HTML: the five characters that mean something there are written as entities, so a text stays a text; signs that nobody sees are shown.
import { unseenSigns, visibleSign } from './visible-signs.ts';

const special = new RegExp(`[&<>"'${unseenSigns}]`);
const everySpecial = new RegExp(special, 'g');
const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escapes a text for element content and for a quoted attribute. Most texts need nothing, so that is tried first. */
export function escapeHtml(text: string): string {
  return special.test(text) ? text.replace(everySpecial, (sign) => entities[sign] ?? visibleSign(sign)) : text;
}
