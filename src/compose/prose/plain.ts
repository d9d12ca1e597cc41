// The short way: most records are paragraphs under plain headings, and where no line begins a list, a quote or the like there is nothing to take apart.
import type { Paragraph } from '../../sheet/sheet.ts';
import { inlines } from './inlines.ts';
import { markdown } from './markdown.ts';

/** What may make a line, met at its beginning, something else than the line of a paragraph or a plain heading. */
const structure =
  /[-+=>|: ~`![]|#(?!#{0,5} [^\s#][^#\n]*(?:\n|$))|\*(?:[ \n]|$|\*(?![^ *\n]))|_(?:[ \n_]|$)|\d{1,9}[.)]/y;
/** Signs that change what is round them, wherever they stand. */
const changing = ['\t', '\r', '\0'];
/** Signs that mean something inside a line. */
const marked = /[*_`[<&\\~]|:\/\//;

/** A line that is a heading, with the paragraph around it cut there. */
const headings = /(?:^|\n)(?=#)|\n(?<=(?:^|\n)#+[^#\n]*\n)/;

/** The paragraphs of a text that is nothing but paragraphs and headings; undefined when it may hold anything else. */
export function plainProse(text: string): readonly Paragraph[] | undefined {
  if (!isPlain(text)) return undefined;
  const chunks = text.split(/\n{2,}/).flatMap((chunk) => (chunk.includes('#') ? chunk.split(headings) : [chunk]));
  return chunks.filter((chunk) => chunk !== '' && chunk !== '\n').map(paragraph);
}

/** Looks at the beginning of each line only: most of a text is neither. */
function isPlain(text: string): boolean {
  if (changing.some((sign) => text.includes(sign))) return false;
  for (let start = 0; ;) {
    structure.lastIndex = start;
    if (structure.test(text)) return false;
    const end = text.indexOf('\n', start);
    if (end < 0) return true;
    start = end + 1;
  }
}

function paragraph(chunk: string): Paragraph {
  if (chunk.startsWith('#')) return headingOf(chunk);
  return { kind: 'paragraph', text: textOf(chunk) };
}

function headingOf(line: string): Paragraph {
  const depth = line.indexOf(' ');
  return { kind: 'heading', level: depth < 3 ? 3 : 4, text: textOf(line.slice(depth + 1)) };
}

function textOf(chunk: string): ReturnType<typeof inlines> {
  return marked.test(chunk) ? inside(chunk) : oneLine(chunk);
}

/** A paragraph with marks in it. */
function inside(chunk: string): ReturnType<typeof inlines> {
  const [token] = markdown.parseInline(linesOf(chunk).join('\n'), {});
  return inlines(token?.children ?? []);
}

/** A line end inside a paragraph is a space. */
function oneLine(chunk: string): string {
  if (!chunk.includes('\n')) return withoutEnd(chunk);
  return linesOf(chunk).map(withoutEnd).join(' ');
}

/** The lines of a paragraph, the last without the spaces at its end; they count for nothing. */
function linesOf(chunk: string): readonly string[] {
  const lines = chunk.split('\n');
  if (lines[0] === '') lines.shift();
  if (lines.at(-1) === '') lines.pop();
  return [...lines.slice(0, -1), withoutEnd(lines.at(-1) ?? '')];
}

/** Steps back over the spaces: a pattern tries every space of a long run as the first, which a hostile text can turn into hours. */
function withoutEnd(line: string): string {
  let end = line.length;
  while (line.charCodeAt(end - 1) === 0x20) end -= 1;
  return line.slice(0, end);
}
