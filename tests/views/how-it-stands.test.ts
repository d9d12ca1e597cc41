// The first page at a glance: what is due a line each, longest over first; units of published rows as a book sets them; a log of one kind does not repeat it.
import { describe, expect, it } from 'vitest';
import { provedRows } from '../../src/calc/proved-rows.ts';
import { table } from '../../src/table/table.ts';
import { asSet, behindNumber } from '../../src/views/wording/published-unit.ts';
import { plainText } from '../../src/render/text-html.ts';
import { makerFile, pageSays, record, smallBinder } from './small-folder.ts';

const schedule = makerFile(`services:
  - {id: oil, item: Gearbox oil, do: renew, every: 6 months}
  - {id: plugs, item: Plugs, do: clean, every: 12 months}
  - {id: chain, item: Chain, do: oil, every: 3 months}`);
const done = (services: string, date: string): string =>
  record(`title: Done\ndate: ${date}\nkind: service\nstate: done\nservices: [${services}]`);

describe('the first page', () => {
  const binder = smallBinder({
    'maker/book.yaml': schedule,
    'jobs/2025-01-05-oil.md': done('oil', '2025-01-05'),
    'jobs/2024-11-05-plugs.md': done('plugs', '2024-11-05'),
  });
  const page = binder.pages.find(({ file }) => file === 'index.html');
  const facts = page?.make().blocks.flatMap((block) => (block.type === 'facts' ? block.facts : [])) ?? [];
  const due = facts.find(({ name }) => name === 'Due or overdue')?.lines?.map(plainText) ?? [];

  it('has what is overdue longest first, with how long, and what nobody recorded last', () => {
    expect(due[0]).toMatch(/^Gearbox oil, renew, \d+\sdays over$/u);
    expect(due[1]).toMatch(/^Plugs, clean, \d+\sdays? over$/u);
    expect(due.slice(2).every((line) => !line.includes('over'))).toBe(true);
  });
});

describe('a log of one kind of work', () => {
  const binder = smallBinder({ 'jobs/2025-01-05-oil.md': done('', '2025-01-05').replace('services: []', '') });
  it('does not name the kind again in each line', () => {
    expect(pageSays(binder, 'log/kind-service.html')).toMatch(/5\sJanuary\s2025\s+Done$/mu);
  });
});

describe('a unit of a published table', () => {
  it('is set as in a book, and nothing where it is a plain number', () => {
    expect([behindNumber('1'), behindNumber(''), behindNumber('deg')]).toEqual(['', '', '°']);
    expect(behindNumber('N*m')).toBe('\u00a0N·m');
    expect(behindNumber('kg/m3')).toBe('\u00a0kg/m³');
    expect(asSet('setting for 40 N*m, Vc 1570 cm3, 30 degC')).toBe('setting for 40 N·m, Vc 1570 cm³, 30 °C');
    expect(asSet('M3 in class 8.8, p1(r^n - 1)')).toBe('M3 in class 8.8, p1(r^n - 1)');
  });
  it('stands behind the number it belongs to: a row run in another quantity has none', () => {
    const all = provedRows();
    const bar = all.find(({ row }) => row === 'meh_Z1000_p');
    expect([bar?.published, bar?.unit]).toEqual([0.8988, 'bar']);
    for (const { table: id, row, unit, published } of all) {
      const cell = Number(table(id).byId.get(row)?.cells['value']);
      if (published === undefined || Number.isNaN(cell) || unit === '') continue;
      expect(Math.abs(cell - published), row).toBeLessThanOrEqual(1e-6 * Math.abs(published));
    }
  });
});
