// Blocks into HTML: one function for each type. They are functions and not templates, for a site has thousands of them.
import type { Block, FactsBlock, HeadingBlock, ProseBlock } from '../sheet/sheet.ts';
import { blanksHtml } from './blocks/blanks-html.ts';
import { cardsHtml } from './blocks/cards-html.ts';
import { cautionHtml } from './blocks/caution-html.ts';
import { checklistHtml } from './blocks/checklist-html.ts';
import { codeHtml, drawingHtml, plotHtml } from './blocks/figures-html.ts';
import { signatureHtml } from './blocks/signature-html.ts';
import { escapeHtml } from './escape.ts';
import { factRowsHtml } from './facts-html.ts';
import { photoHtml } from './photo-html.ts';
import { proseHtml } from './prose-html.ts';
import type { Scope } from './scope.ts';
import { gridHtml, tableHtml } from './table-html.ts';
import { textHtml } from './text-html.ts';

/** The HTML of blocks, one after the other. */
export function blocksHtml(blocks: readonly Block[], scope: Scope): string {
  let html = '';
  for (const block of blocks) html += blockHtml(block, scope);
  return html;
}

function blockHtml(block: Block, scope: Scope): string {
  switch (block.type) {
    case 'heading':
      return headingHtml(block, scope);
    case 'prose':
      return writtenHtml(block, scope);
    case 'facts':
      return factsHtml(block, scope);
    case 'table':
      return tableHtml(block, scope);
    case 'checklist':
      return checklistHtml(block, scope);
    case 'blanks':
      return blanksHtml(block, scope);
    case 'caution':
      return cautionHtml(block);
    case 'plot':
      return plotHtml(block, scope);
    case 'photo':
      return photoHtml(block, scope);
    case 'cards':
      return cardsHtml(block, scope);
    case 'grid':
      return gridHtml(block, scope);
    case 'drawing':
      return drawingHtml(block, scope);
    case 'signature':
      return signatureHtml(block);
    case 'break':
      return `<hr class="break ${block.to}">\n`;
    case 'code':
      return codeHtml(block);
  }
}

function headingHtml({ level, id, text }: HeadingBlock, scope: Scope): string {
  const depth = scope.headingLevel(level);
  return `<h${depth} id="${escapeHtml(id)}">${textHtml(text, scope)}</h${depth}>\n`;
}

function writtenHtml({ paragraphs }: ProseBlock, scope: Scope): string {
  return `<div class="prose">\n${proseHtml(paragraphs, scope)}</div>\n`;
}

function factsHtml({ facts, across }: FactsBlock, scope: Scope): string {
  const set = across === undefined ? '' : ` across-${across}`;
  return `<dl class="facts${set}">\n${factRowsHtml(facts, scope)}</dl>\n`;
}
