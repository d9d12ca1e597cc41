// One way from each type of block to slabs. The compiler names a type that is missing here.
import type { Block, HeadingBlock, PhotoBlock } from '../sheet/sheet.ts';
import { blanksSlabs } from './blocks/blanks.ts';
import { breakSlabs } from './blocks/break.ts';
import { cardsSlabs } from './blocks/cards.ts';
import { cautionSlabs } from './blocks/caution.ts';
import { checklistSlabs } from './blocks/checklist.ts';
import { codeSlabs } from './blocks/code.ts';
import { drawingSlabs } from './blocks/drawing.ts';
import { factsSlabs } from './blocks/facts.ts';
import { gridSlabs } from './blocks/grid.ts';
import { headingSlabs } from './blocks/heading.ts';
import { photoSlabs } from './blocks/photo.ts';
import { plotSlabs } from './blocks/plot.ts';
import { proseSlabs } from './blocks/prose.ts';
import { signatureSlabs } from './blocks/signature.ts';
import { tableBlockSlabs } from './blocks/table.ts';
import { half, leading } from './scale.ts';
import { under, type Setting } from './setting.ts';
import { firstSpaced, type Slab } from './slab.ts';
import { plainText } from './words.ts';

/** Slabs of a block; headings come with the depth they stand at, photos of one size together. */
export function blockSlabs(block: Exclude<Block, HeadingBlock | PhotoBlock>, setting: Setting): Iterable<Slab> {
  switch (block.type) {
    case 'prose':
      return proseSlabs(block, setting);
    case 'facts':
      return factsSlabs(block, setting);
    case 'table':
      return tableBlockSlabs(block, setting);
    case 'checklist':
      return checklistSlabs(block, setting);
    case 'blanks':
      return blanksSlabs(block, setting);
    case 'caution':
      return cautionSlabs(block, setting);
    case 'plot':
      return plotSlabs(block, setting);
    case 'cards':
      return cardsSlabs(block, setting);
    case 'grid':
      return gridSlabs(block, setting);
    case 'drawing':
      return drawingSlabs(block, setting);
    case 'signature':
      return signatureSlabs(block, setting);
    case 'break':
      return breakSlabs(block);
    case 'code':
      return codeSlabs(block, setting);
  }
}

/** All blocks in their order: sections below the document, photos that follow each other in rows. */
export function* allSlabs(blocks: readonly Block[], setting: Setting): Generator<Slab> {
  const top = topLevel(blocks);
  let now = setting;
  let after: Block['type'] | undefined;
  let above = '';
  let photos: PhotoBlock[] = [];
  for (const [index, block] of blocks.entries()) {
    const first = photos[0];
    if (first !== undefined && (block.type !== 'photo' || block.size !== first.size)) {
      yield* photoSlabs(photos, now);
      photos = [];
    }
    if (block.type === 'photo') {
      photos.push(block);
      continue;
    }
    if (block.type !== 'heading') {
      const slabs = parted(blockSlabs(untitled(block, above), now), whiteBetween(after, block.type));
      const leads = after === 'heading' || blocks[index + 1]?.type === 'signature';
      yield* leads && block.type === 'prose' ? introducing(slabs) : slabs;
      after = block.type;
      continue;
    }
    after = block.type;
    above = plainText(block.text);
    const depth = Math.min(block.level - top + 2, now.depth + 1);
    const section = depth === 2 ? under(setting.section, 'Sect') : now.section;
    now = { ...now, section, depth };
    yield* headingSlabs(block, depth, now);
  }
  yield* photoSlabs(photos, now);
}

/** A plot whose title stands as the heading above it needs no caption of its own. */
function untitled<B extends Block>(block: B, above: string): B {
  return block.type === 'plot' && block.title === above ? { ...block, title: '' } : block;
}

/** A line or two under a heading, or above a place to sign, say what comes next, and stay with it. */
function introducing(slabs: Iterable<Slab>): readonly Slab[] {
  const all = [...slabs];
  return all.length > 4 ? all : all.map((slab) => ({ ...slab, keep: true }));
}

function whiteBetween(after: Block['type'] | undefined, now: Block['type']): number {
  if (after === undefined || after === 'heading') return 0;
  return after === 'caution' && now === 'caution' ? half : leading;
}

/** Blocks stand a line apart; below a heading they stand as near as they ask. */
function parted(slabs: Iterable<Slab>, least: number): Iterable<Slab> {
  return firstSpaced(slabs, ({ before = 0 }) => Math.max(least, before));
}

function topLevel(blocks: readonly Block[]): number {
  return blocks.reduce((least, block) => (block.type === 'heading' ? Math.min(least, block.level) : least), 3);
}
