// What is told of a sheet before its first page is set: whether it is surely long, and which photos it shows.
import { describe, expect, it } from 'vitest';
import { allSlabs } from '../../src/layout/block-slabs.ts';
import { isSurelyLong } from '../../src/layout/fewest-pages.ts';
import { layOut } from '../../src/layout/layout.ts';
import { widthOf } from '../../src/pdf/faces.ts';
import { photoFiles } from '../../src/sheet/photo-files.ts';
import type { Block } from '../../src/sheet/sheet.ts';
import { longHistory } from '../pdf/long-history.ts';
import { everyBlock, sheetOf } from '../pdf/sample-sheets.ts';
import { binderOf } from '../views/binder.ts';
import { itemsOf, steps, workTable } from './set-pages.ts';

const machines = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'];

function slabsIn(blocks: readonly Block[]): number {
  const section = { role: 'Document' } as const;
  const setting = { width: 480, bleed: 0, height: 700, measure: { width: widthOf }, links: new Set<string>(), section };
  return [...allSlabs(blocks, { ...setting, depth: 1 })].length;
}

describe('a sheet that is surely long', () => {
  it('has as many slabs as make a sheet be set as it comes', () => {
    const records = Array.from({ length: 200 }, (_, count) => count).find((count) => isSurelyLong(longHistory(count)));
    expect(records).toBeGreaterThan(5);
    expect(slabsIn(longHistory(records ?? 0))).toBeGreaterThanOrEqual(600);
    expect(isSurelyLong([workTable(steps(600))])).toBe(true);
    expect(slabsIn([workTable(steps(600))])).toBeGreaterThanOrEqual(600);
  });
  it('is no short one', () => {
    expect(isSurelyLong(everyBlock)).toBe(false);
    expect(isSurelyLong([workTable(steps(599))])).toBe(false);
    const long = machines.flatMap((machine) =>
      binderOf(machine, '2026-11-14').sheets.filter(({ blocks }) => isSurelyLong(blocks)),
    );
    for (const { blocks, id } of long) expect(slabsIn(blocks), id).toBeGreaterThanOrEqual(600);
  });
});

describe('the photos that a sheet shows', () => {
  it('are those that stand on its pages', () => {
    let shown = 0;
    for (const sheet of machines.flatMap((machine) => binderOf(machine, '2026-11-14').sheets)) {
      const pages = [...layOut(sheet, { width: widthOf, photo: () => ({ width: 400, height: 300 }) })];
      const placed = new Set(itemsOf(pages, 'photo').map(({ file }) => file));
      expect(new Set(photoFiles(sheet.blocks)), sheet.id).toEqual(placed);
      shown += placed.size;
    }
    expect(shown).toBeGreaterThan(10);
  });
  it('are found between the words as well', () => {
    const photo = (file: string) => ({
      kind: 'photo' as const,
      photo: { type: 'photo' as const, file, caption: '', alt: '', size: 'half' as const },
    });
    const blocks: readonly Block[] = [
      {
        type: 'prose',
        paragraphs: [
          photo('photos/a.jpg'),
          { kind: 'quote', paragraphs: [photo('photos/b.jpg')] },
          { kind: 'list', ordered: false, items: [[{ kind: 'paragraph', text: 'one' }], [photo('photos/c.jpg')]] },
        ],
      },
    ];
    expect([...photoFiles(blocks)]).toEqual(['photos/a.jpg', 'photos/b.jpg', 'photos/c.jpg']);
    const pages = [...layOut(sheetOf(blocks), { width: widthOf, photo: () => ({ width: 400, height: 300 }) })];
    expect(itemsOf(pages, 'photo')).toHaveLength(3);
  });
});
