// Whatever is written in the records: the sheet stays on the paper, nothing lies over anything else, and no word is lost.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/layout/layout.ts';
import type { PlacedPage } from '../../src/layout/placed.ts';
import { widthOf } from '../../src/pdf/faces.ts';
import type { Block, Row } from '../../src/sheet/sheet.ts';
import { sheetOf } from '../pdf/sample-sheets.ts';
import { faults } from '../layout/lint-page.ts';
import { block, plain } from './any-block.ts';

describe('layout', () => {
  it('stays on paper without overlap, whatever the records say', () => {
    fc.assert(
      fc.property(
        fc.array(block, { maxLength: 6 }),
        fc.record({
          paper: fc.constantFrom('a4' as const, 'letter' as const, 'a5' as const, 'half-letter' as const),
          binding: fc.constantFrom('left' as const, 'top' as const),
          foot: fc.constantFrom('none' as const, 'sign off' as const),
          title: plain,
          machine: plain,
          frame: plain.map((frame) => frame.slice(0, 20)),
          continues: plain,
          leftOut: fc.array(plain, { maxLength: 2 }),
        }),
        (blocks, more) => {
          const pages = [...layOut(sheetOf(blocks, more), { width: widthOf })];
          expect(pages.flatMap(faults)).toEqual([]);
          expect(pages.map((page) => page.number)).toEqual(pages.map((_page, index) => index + 1));
        },
      ),
      { numRuns: 150, endOnFailure: true },
    );
  });

  it('loses no word of a table or of prose', () => {
    const letters = fc.array(fc.stringMatching(/^[a-z]{1,14}$/), { maxLength: 40 });
    fc.assert(
      fc.property(letters, letters, fc.constantFrom('a4' as const, 'a5' as const), (first, second, paper) => {
        const rows: Row[] = [first, second].map((words) => ({
          kind: 'cells',
          cells: [{ text: words.join(' ') }, { text: words.join('') }],
        }));
        const columns = [
          { head: '', width: 3 },
          { head: '', width: 1 },
        ];
        const blocks: Block[] = [
          { type: 'prose', paragraphs: [{ kind: 'paragraph', text: first.join(' ') }] },
          { type: 'table', use: 'read', empty: '', columns, rows },
        ];
        const pages = [...layOut(sheetOf(blocks, { paper, title: '' }), { width: widthOf })];
        const wanted = [first, first, first, second, second].map((words) => words.join('')).join('');
        expect(letterCount(pages)).toBe(wanted.length);
      }),
      { numRuns: 60 },
    );
  });
});

function letterCount(pages: readonly PlacedPage[]): number {
  return pages
    .flatMap((page) =>
      page.items.flatMap((item) =>
        item.kind === 'text' && item.tag !== undefined ? [item.text.replaceAll(/[ ]/g, '').length] : [],
      ),
    )
    .reduce((sum, length) => sum + length, 0);
}
