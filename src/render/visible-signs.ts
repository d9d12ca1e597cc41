// Signs that nobody sees and that change what is read: those that turn the direction of writing, and control characters. They are shown by their code point.

/** Embeddings, overrides and isolates of direction, and controls other than tab and line end: inside the brackets of a pattern. */
export const unseenSigns = '\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f-\\u009f\\u202a-\\u202e\\u2066-\\u2069';

const everyUnseen = new RegExp(`[${unseenSigns}]`, 'gu');

/** The text with each such sign as `U+202E`; most texts have none and stay what they are. */
export function withVisibleSigns(text: string): string {
  return text.replaceAll(everyUnseen, visibleSign);
}

/** One such sign by its code point. */
export function visibleSign(sign: string): string {
  return `U+${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`;
}
