// Drawings in true scale: a millimetre is a millimetre on every paper, a line of 100 mm proves it, and nothing is made to fit.
import { describe, expect, it } from 'vitest';
import type { Block, DrawingBlock, Paper } from '../../src/sheet/sheet.ts';
import { sheetOf } from '../pdf/sample-sheets.ts';
import { faults, mm } from './lint-page.ts';
import { itemsOf, pagesOf, textOf } from './set-pages.ts';

const papers: readonly Paper[] = ['a4', 'letter', 'a5', 'half-letter'];

function drawing(width: number, height: number, more: DrawingBlock['marks'] = []): DrawingBlock {
  return {
    type: 'drawing',
    title: 'Template',
    description: 'Two holes.',
    size: { width, height },
    marks: [
      { kind: 'circle', x: 10, y: 10, radius: 4 },
      { kind: 'circle', x: width - 10, y: height - 10, radius: 4 },
      ...more,
    ],
  };
}

const set = (block: Block, paper: Paper) => pagesOf(sheetOf([block], { paper }));

/** Lines as long as the check line, level, in millimetres. */
function lengths(block: Block, paper: Paper): readonly number[] {
  return itemsOf(set(block, paper), 'line')
    .filter((line) => line.tag?.role === 'Figure' && line.y1 === line.y2)
    .map((line) => (line.x2 - line.x1) / mm);
}

describe('a drawing', () => {
  it.each(papers)('keeps its millimetres on %s', (paper) => {
    const pages = set(drawing(90, 60), paper);
    const [one, other] = itemsOf(pages, 'circle').filter((circle) => circle.tag?.role === 'Figure');
    expect(((other?.x ?? 0) - (one?.x ?? 0)) / mm).toBeCloseTo(70, 6);
    expect(((other?.y ?? 0) - (one?.y ?? 0)) / mm).toBeCloseTo(40, 6);
    expect((one?.radius ?? 0) / mm).toBeCloseTo(4, 6);
    expect(pages.flatMap(faults)).toEqual([]);
  });
  it.each(papers)('carries a line of exactly 100 mm and says what it is for on %s', (paper) => {
    for (const block of [drawing(30, 20), drawing(90, 60), drawing(120, 100), drawing(60, 118)])
      expect(lengths(block, paper)).toEqual([expect.closeTo(100, 6)]);
    expect(set(drawing(30, 20), paper).map(textOf).join('')).toMatch(/exactly 100\smm/);
  });
  it('is turned by a quarter where it fits only so, its distances kept', () => {
    const wide = drawing(200, 60, [{ kind: 'label', x: 100, y: 30, text: 'T', anchor: 'start' }]);
    const pages = set(wide, 'a4');
    const [one, other] = itemsOf(pages, 'circle').filter((circle) => circle.tag?.role === 'Figure');
    expect(((one?.x ?? 0) - (other?.x ?? 0)) / mm).toBeCloseTo(40, 6);
    expect(((other?.y ?? 0) - (one?.y ?? 0)) / mm).toBeCloseTo(180, 6);
    expect(pages.flatMap(faults)).toEqual([]);
  });
  it('is left out with a reason where no turn helps, never printed smaller', () => {
    const pages = set(drawing(300, 300), 'a4');
    expect(itemsOf(pages, 'circle').filter((circle) => circle.tag?.role === 'Figure')).toEqual([]);
    expect(pages.map(textOf).join('')).toContain('Too large for this paper');
    expect(lengths(drawing(300, 300), 'a4')).toEqual([]);
  });
  it('is told in words to who cannot see it', () => {
    const tags = itemsOf(set(drawing(90, 60), 'a4'), 'circle').map((circle) => circle.tag?.alt);
    expect(tags).toContain('Two holes.');
  });
});

describe('small cards', () => {
  const card = (small: boolean): Block => ({
    type: 'cards',
    size: { width: 86, height: 54 },
    hole: false,
    small,
    cards: [{ title: 'Settings', lines: ['Plug gap 0.6 mm, points gap 0.35 mm, idle 1200 rpm, '.repeat(6)] }],
  });
  it('take more on one side, and nothing on them is under nine points', () => {
    const cuts = (block: Block): number => itemsOf(set(block, 'a4'), 'box').filter((box) => box.use === 'cut').length;
    expect(cuts(card(true))).toBe(1);
    expect(cuts(card(false))).toBeGreaterThan(1);
    expect(set(card(true), 'a4').flatMap(faults)).toEqual([]);
  });
});
