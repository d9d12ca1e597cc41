// One value on one line, where every reader of YAML sees the same text: bare words, or quotes without anything escaped.

/** A bare word begins with none of the signs that mean something; a minus only before a figure. */
const begins = /^(?:[^\s\-?:,[\]{}#&*!|>'"%@`]|-\d)/;
const meansMore = /[[{]|:(?: |$)| #/;

/** Without the spaces at its end: to YAML, no other character is one. */
export function withoutSpaces(text: string): string {
  let end = text.length;
  while (text.charCodeAt(end - 1) === 0x20) end -= 1;
  return text.slice(0, end);
}

/** Between two quotes, without anything that is written in another way there, and without a bracket. */
const quoted = /"[^"\\[\]{}]*"|'[^'[\]{}]*'/y;

/** What stands in quotes at a place of a line, quotes and all. */
export function quotedAt(line: string, at: number): string | undefined {
  const first = line.charCodeAt(at);
  if (first !== 0x22 && first !== 0x27) return undefined;
  quoted.lastIndex = at;
  return quoted.exec(line)?.[0];
}

/** The text of a value with what follows it on its line; undefined where it is not surely one. */
export function plainScalar(said: string): string | undefined {
  const text = withoutSpaces(said);
  if (text === '?') return text;
  const quote = quotedAt(text, 0);
  if (quote !== undefined) return quote.length === text.length ? quote.slice(1, -1) : undefined;
  return begins.test(text) && !meansMore.test(text) ? text : undefined;
}
