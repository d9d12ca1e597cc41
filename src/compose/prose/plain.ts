// The short way for text without any mark-up: most records are plain words, and plain words need no parser.
import type { Paragraph } from '../../sheet/sheet.ts';

/** Signs that may mean something to Markdown wherever they stand, and those that do so at the beginning of a line. */
const marked = /[*_`[<&\\~\t\r\0]|(?:^|\n)(?:[-+=#>|: ]|\d{1,9}[.)])/;

/** The paragraphs of a text that holds no sign of Markdown; undefined when it may hold one. */
export function plainProse(text: string): readonly Paragraph[] | undefined {
  if (marked.test(text)) return undefined;
  const chunks = text.split(/\n{2,}/).filter((chunk) => chunk !== '' && chunk !== '\n');
  return chunks.map((chunk) => ({ kind: 'paragraph', text: oneLine(chunk) }));
}

/** A line end inside a paragraph is a space. */
function oneLine(chunk: string): string {
  return chunk.replace(/^\n| *\n?$/g, '').replaceAll(/ *\n/g, ' ');
}
