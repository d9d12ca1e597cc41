// Text from records made harmless for a terminal: what cannot be seen, or would turn the line round, is shown as its code.

/** Control characters but the line end; marks and overrides of writing direction; other characters that hide. */
const hidden = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/gu;
/** Our own colours, as the report writes them. */
const colourMark = /(\u001b\[[0-9;]*m)/u;

/** The text with every such character as `\u{…}`. `colours` lets colour marks through. */
export function visible(text: string, colours: boolean): string {
  if (!colours) return text.replace(hidden, code);
  return text
    .split(colourMark)
    .map((part, index) => (index % 2 === 1 ? part : part.replace(hidden, code)))
    .join('');
}

function code(character: string): string {
  return '\\u{' + (character.codePointAt(0) ?? 0).toString(16) + '}';
}
