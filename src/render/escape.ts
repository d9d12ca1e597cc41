// Text into HTML: the five characters that mean something there are written as entities, so a text stays a text.

const special = /[&<>"']/;
const everySpecial = /[&<>"']/g;
const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Escapes a text for element content and for a quoted attribute. Most texts need nothing, so that is tried first. */
export function escapeHtml(text: string): string {
  return special.test(text) ? text.replace(everySpecial, (character) => entities[character] ?? character) : text;
}
