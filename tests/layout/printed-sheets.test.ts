// The sheets of the demo and the fixtures as they lie on paper: nothing sticks out, the foot is never alone, a card is whole on one side.
import { describe, expect, it } from 'vitest';
import { sectionsWhole } from '../../src/layout/whole.ts';
import type { PlacedPage } from '../../src/layout/placed.ts';
import type { Slab } from '../../src/layout/slab.ts';
import { plainText } from '../../src/layout/words.ts';
import type { Paper, Sheet } from '../../src/sheet/sheet.ts';
import { binderOf } from '../views/binder.ts';
import { faults, inkOf, mm } from './lint-page.ts';
import { pagesOf, textOf } from './set-pages.ts';

const machines = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125', 'tests/fixtures/from-the-manual'];
const papers: readonly Paper[] = ['a4', 'letter', 'a5', 'half-letter'];

function on(sheet: Sheet, paper: Paper): readonly PlacedPage[] {
  return pagesOf({ ...sheet, paper, blocks: sheet.blocks });
}

/** A back has its frame elsewhere than the first page has. */
function isBack(page: PlacedPage, first: PlacedPage | undefined): boolean {
  return page.frame.x !== first?.frame.x || page.frame.y !== first.frame.y;
}

interface Bound {
  readonly sides?: 'both';
  readonly binding?: 'top';
}

/** Content in the punched margin: at least 20 mm at the side that is punched, which changes with the page where both sides are printed. */
function outOfMargin(page: PlacedPage, back: boolean, { binding }: Bound): readonly string[] {
  const most = 20 * mm - 0.1;
  return page.items.flatMap((item) => {
    if (item.kind !== 'text') return [];
    const ink = inkOf(item);
    const free =
      binding === 'top' ? (back ? page.height - ink.bottom : ink.top) : back ? page.width - ink.right : ink.left;
    // Cards may be wider than the frame: they are cut out, and not punched with the leaf.
    const card =
      item.tag !== undefined && (back || binding === 'top') && ink.right > page.frame.x + page.frame.width + 1;
    return free >= most || card
      ? []
      : [`page ${String(page.number)}: ${item.text} ${String(free / mm)} mm from the punched edge`];
  });
}

/** What a page says besides its running head and the foot to be signed. */
function said(page: PlacedPage): string {
  return textOf(page)
    .replaceAll(/state left in|next|hand|date/g, '')
    .trim();
}

describe.each(machines)('the sheets of %s', (machine) => {
  const { sheets } = binderOf(machine, '2026-11-14');
  it.each(papers)('have no fault on %s, and no page for the foot alone', (paper) => {
    for (const sheet of sheets) {
      const pages = on(sheet, paper);
      expect({ sheet: sheet.id, faults: pages.flatMap(faults) }).toEqual({ sheet: sheet.id, faults: [] });
      const last = pages.at(-1);
      if (sheet.foot !== 'sign off' || last === undefined) continue;
      expect(textOf(last), sheet.id).toContain('state left in');
      expect(said(last).length, sheet.id).toBeGreaterThan(10);
    }
  });
  it.each(['a4', 'half-letter'] as const)(
    'have no fault on %s printed on both sides, and bound at the top',
    (paper) => {
      for (const sheet of sheets) {
        for (const more of [{ sides: 'both' }, { binding: 'top' }, { sides: 'both', binding: 'top' }] as const) {
          const pages = pagesOf({ ...sheet, ...more, paper, blocks: sheet.blocks });
          expect({ sheet: sheet.id, more, faults: pages.flatMap(faults) }).toEqual({
            sheet: sheet.id,
            more,
            faults: [],
          });
          expect(pages.flatMap((page) => outOfMargin(page, isBack(page, pages[0]), more))).toEqual([]);
          const backs = pages.filter((page) => isBack(page, pages[0])).map((page) => page.number);
          const even = pages.map((page) => page.number).filter((number) => number % 2 === 0);
          if ('sides' in more) expect(backs).toEqual(even);
          else expect(even).toEqual(expect.arrayContaining(backs));
        }
      }
    },
  );
  it.each(['tag', 'card'] as const)('have their cards each on a %s of its own, without a fault', (paper) => {
    const carded = sheets.filter((sheet) => sheet.blocks.some((block) => block.type === 'cards'));
    expect(carded.length).toBeGreaterThan(2);
    for (const sheet of carded) {
      const pages = on(sheet, paper);
      const cards = sheet.blocks.flatMap((block) => (block.type === 'cards' ? block.cards : []));
      expect(pages.length, sheet.id).toBeGreaterThanOrEqual(cards.length);
      expect({ sheet: sheet.id, faults: pages.flatMap(faults) }).toEqual({ sheet: sheet.id, faults: [] });
      const size = paper === 'tag' ? [60, 120] : [85.6, 53.98];
      for (const page of pages) {
        expect([page.width / mm, page.height / mm]).toEqual(size.map((side) => expect.closeTo(side, 2)));
        expect(textOf(page).trim().length).toBeGreaterThan(3);
      }
      const text = pages.map(textOf).join(' ');
      for (const { title } of cards) expect(text).toContain(title.split(' ')[0]);
    }
  });
  it.each(['a4', 'letter'] as const)('have what to look at when it does not start on one side of %s', (paper) => {
    const sheet = sheets.find((one) => one.id === 'before-first-start');
    if (sheet === undefined) throw new Error('there is no sheet of the first start');
    const pages = on(sheet, paper);
    const said = sheet.blocks.flatMap((block) => (block.type === 'table' && block.use === 'card' ? block.rows : []));
    const seen = said.flatMap((row) => (row.kind === 'cells' ? [plainText(row.cells[0]?.text ?? '')] : []));
    expect(seen.length).toBeGreaterThan(20);
    const side = pages.filter((page) => textOf(page).includes('It does not start'));
    expect(side.map((page) => page.number)).toEqual([2]);
    const words = side.map(textOf).join('').replaceAll(/\s+/gu, ' ');
    for (const one of seen) expect(words).toContain(one.replaceAll(/\s+/gu, ' '));
  });
});

describe('sections kept whole', () => {
  const slab = (height: number, section?: 'whole' | 'other'): Slab => ({
    height,
    ...(section === undefined ? {} : { section }),
    draw: () => undefined,
  });
  const kept = (slabs: readonly Slab[]): readonly boolean[] =>
    [...sectionsWhole(slabs, 600)].map((one) => one.keep ?? false);
  it('keep a short section together to its end', () => {
    expect(kept([slab(20, 'whole'), slab(100), slab(100), slab(20, 'other'), slab(50)])).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });
  it('let a section of more than two fifths of a page be parted', () => {
    expect(kept([slab(20, 'whole'), slab(200), slab(100)])).toEqual([false, false, false]);
  });
  it('lose nothing, however long', () => {
    const many = Array.from({ length: 130 }, () => slab(1));
    expect(kept([slab(20, 'whole'), ...many]).length).toBe(131);
  });
});
