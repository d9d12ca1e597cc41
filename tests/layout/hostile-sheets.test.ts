// Every sheet with what nobody foresaw written into it: endless names, part numbers without a break, other scripts, nothing, far too much.
import { describe, expect, it } from 'vitest';
import type { Block, Paper, Row, Sheet } from '../../src/sheet/sheet.ts';
import { binderOf } from '../views/binder.ts';
import { faults } from './lint-page.ts';
import { pagesOf } from './set-pages.ts';

/** Keys whose texts are the printer's business or a name by which things find each other; all other texts are anybody's. */
const notWords = new Set(
  'type kind use id box align mark line size code file grade to level paper binding foot anchor hole dash'.split(' '),
);

function withWords(value: unknown, change: (text: string) => string, key = ''): unknown {
  if (typeof value === 'string') return notWords.has(key) ? value : change(value);
  if (Array.isArray(value)) return value.map((each) => withWords(each, change, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, withWords(inner, change, name)]));
}

/** The mapped blocks have the shape of the ones that they were made from. */
function isBlocks(value: unknown): value is readonly Block[] {
  return Array.isArray(value);
}

function worded(blocks: readonly Block[], change: (text: string) => string): readonly Block[] {
  const made = withWords(blocks, change);
  if (!isBlocks(made)) throw new Error('no blocks');
  return made;
}

const lengthened = (text: string, by: string): string => (text.trim() === '' ? text : (text + by).slice(0, 200));
const name =
  ' of the left hand inner clutch cover behind the kick-start lever, as bought from the widow in the lane'.repeat(3);

const ways: Readonly<Record<string, (blocks: readonly Block[]) => readonly Block[]>> = {
  'names of 200 characters': (blocks) => worded(blocks, (text) => lengthened(text, name)),
  'part numbers without a break': (blocks) =>
    worded(blocks, (text) => (/^[\d.,–-]*$/.test(text) ? text : '4G7/117-22-ABC.0815/'.repeat(6))),
  'right-to-left words': (blocks) => worded(blocks, (text) => lengthened(text, ' מכסה המצמד השמאלי غطاء القابض')),
  'words of characters that no typeface has': (blocks) =>
    worded(blocks, (text) => lengthened(text, ' 離合器蓋左側內部 🔧')),
  'combining marks and odd spaces': (blocks) =>
    worded(blocks, (text) => lengthened(text, ' Z̵̡̢̛a̶͎͋l\u200dg\u00ado\u2003\u2028\u0000\ufffe')),
  'lists with nothing in them': (blocks) => blocks.map(emptied),
  'tables of 400 rows': (blocks) => blocks.map(multiplied),
};

function emptied(block: Block): Block {
  switch (block.type) {
    case 'table':
      return { ...block, rows: [] };
    case 'blanks':
    case 'checklist':
      return { ...block, items: [] };
    case 'facts':
      return { ...block, facts: [] };
    case 'prose':
      return { ...block, paragraphs: [] };
    case 'cards':
      return { ...block, cards: [] };
    case 'plot':
      return { ...block, series: [], limits: [] };
    case 'signature':
      return { ...block, lines: [] };
    case 'grid':
      return { ...block, rows: 0, filled: [] };
    case 'drawing':
      return { ...block, marks: [] };
    default:
      return block;
  }
}

function multiplied(block: Block): Block {
  if (block.type !== 'table' || block.rows.length < 2) return block;
  const rows = Array.from({ length: 400 }, (_, index): Row | undefined => block.rows[index % block.rows.length]);
  return { ...block, rows: rows.flatMap((row) => row ?? []) };
}

const papers: readonly Paper[] = ['a4', 'letter', 'a5', 'half-letter'];

/** Every sheet once on one of the papers, so that each way meets all of them. */
function strange(sheet: Sheet, index: number, way: (blocks: readonly Block[]) => readonly Block[]): Sheet {
  const paper = papers[index % papers.length] ?? 'a4';
  const blocks = way(sheet.blocks);
  const title = index % 3 === 0 ? sheet.title + name : sheet.title;
  return {
    ...sheet,
    paper,
    blocks,
    title,
    binding: index % 5 === 0 ? 'top' : sheet.binding,
    sides: index % 2 === 0 ? 'both' : 'one',
  };
}

describe.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])(
  'the sheets of %s with',
  (machine) => {
    const { sheets } = binderOf(machine, '2026-11-14');
    it.each(Object.keys(ways))('%s stay on their paper', (key) => {
      const way = ways[key];
      if (way === undefined) throw new Error('no such way');
      for (const [index, sheet] of sheets.entries()) {
        // The history of the demo takes hundreds of pages in this; its blocks are met in the smaller sheets.
        if (sheet.id === 'history' && key !== 'lists with nothing in them') continue;
        const pages = pagesOf(strange(sheet, index, way));
        const found = pages.flatMap(faults);
        expect({ sheet: sheet.id, found: found.slice(0, 3), count: found.length }).toEqual({
          sheet: sheet.id,
          found: [],
          count: 0,
        });
      }
    });
  },
);
