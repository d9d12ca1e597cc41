// Which photos a sheet shows, by their files: whoever prints it makes these and no others.
import type { Block, Paragraph } from './sheet.ts';

/** Files of the photos in their order, as often as they are shown: in blocks of their own and between the words. */
export function* photoFiles(blocks: Iterable<Block>): Generator<string> {
  for (const block of blocks) {
    if (block.type === 'photo') yield block.file;
    if (block.type === 'prose') yield* photosBetween(block.paragraphs);
  }
}

function* photosBetween(paragraphs: readonly Paragraph[]): Generator<string> {
  for (const paragraph of paragraphs) {
    if (paragraph.kind === 'photo') yield paragraph.photo.file;
    if (paragraph.kind === 'quote') yield* photosBetween(paragraph.paragraphs);
    if (paragraph.kind === 'list') for (const item of paragraph.items) yield* photosBetween(item);
  }
}
