// The sheets of the demo and the fixtures as they lie on paper: nothing sticks out, the foot is never alone, a card is whole on one side.
import { describe, expect, it } from 'vitest';
import { sectionsWhole } from '../../src/layout/whole.ts';
import type { PlacedPage } from '../../src/layout/placed.ts';
import type { Slab } from '../../src/layout/slab.ts';
import type { Paper, Sheet } from '../../src/sheet/sheet.ts';
import { binderOf } from '../views/binder.ts';
import { faults } from './lint-page.ts';
import { pagesOf, textOf } from './set-pages.ts';

const machines = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'];
const papers: readonly Paper[] = ['a4', 'letter', 'a5', 'half-letter'];

function on(sheet: Sheet, paper: Paper): readonly PlacedPage[] {
  return pagesOf({ ...sheet, paper, blocks: sheet.blocks });
}

/** What a page says besides its running head and the foot to be signed. */
function said(page: PlacedPage): string {
  return textOf(page)
    .replaceAll(/state left in|next|hand|date/g, '')
    .trim();
}

describe.each(machines)('the sheets of %s', (machine) => {
  const { sheets } = binderOf(machine, '2026-11-14');
  it.each(papers)('have no fault on %s, and no page for the foot alone', { timeout: 60_000 }, (paper) => {
    for (const sheet of sheets) {
      const pages = on(sheet, paper);
      expect({ sheet: sheet.id, faults: pages.flatMap(faults) }).toEqual({ sheet: sheet.id, faults: [] });
      const last = pages.at(-1);
      if (sheet.foot !== 'sign off' || last === undefined) continue;
      expect(textOf(last), sheet.id).toContain('state left in');
      expect(said(last).length, sheet.id).toBeGreaterThan(10);
    }
  });
  it.each(['a4', 'letter'] as const)('have what to look at when it does not start on one side of %s', (paper) => {
    const sheet = sheets.find((one) => one.id === 'before-first-start');
    if (sheet === undefined) throw new Error('there is no sheet of the first start');
    const pages = on(sheet, paper);
    const side = pages.filter((page) => /Runs only with the choke on|It does not start/.test(textOf(page)));
    expect(side.map((page) => page.number)).toEqual([2]);
    expect(side.map(textOf).join('')).toContain('Will not rev');
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
