// The owner's Markdown as paragraphs. Raw HTML stays text, nothing leads outside, and a photo is a file of the machine or it is words.
import type { Paragraph } from '../sheet/sheet.ts';
import { plainProse } from './prose/plain.ts';
import { blocksOf } from './prose/blocks.ts';
import { markdown } from './prose/markdown.ts';

/**
 * Paragraphs of a Markdown text (CommonMark with tables and strikethrough; no raw HTML, no guessing of links, no changes to
 * typed signs). Text without any mark-up takes a short way that gives the same paragraphs.
 */
export function prose(text: string): readonly Paragraph[] {
  return plainProse(text) ?? blocksOf(markdown.parse(text, {}));
}
