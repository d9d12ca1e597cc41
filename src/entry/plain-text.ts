// The words of a text, without what is only said by how it is set.
import type { Inline, Text } from '../sheet/sheet.ts';

/** A text as one plain line; what is struck through is left out. */
export function plainText(text: Text): string {
  if (typeof text === 'string') return text;
  return text.map(plainInline).join('');
}

function plainInline(inline: Inline): string {
  if (typeof inline === 'string') return inline;
  return inline.kind === 'struck' ? '' : inline.text;
}
