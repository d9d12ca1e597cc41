// Text from records made harmless for a terminal: what cannot be seen, or would turn the line round, is shown as its code.

/** Control characters but the line end; marks that turn the direction of writing or hide; other ends of lines. */
const hidden = /(?!\n)[\p{Cc}\p{Cf}\u2028\u2029]/gu;
/** Our own colours, as the report writes them. */
const colourMark = new RegExp('(' + String.fromCharCode(27) + String.raw`\[[0-9;]*m)`, 'u');

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
