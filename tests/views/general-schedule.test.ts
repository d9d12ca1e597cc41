// Where the maker's file does not speak of a thing, the general schedule does, and says on every line that it is not the maker's.
import { describe, expect, it } from 'vitest';
import { binderOf } from './binder.ts';
import { makerFile, pageSays, sheetSays, smallBinder } from './small-folder.ts';

const general = 'general, not the maker’s';
const lineOf = (text: string, item: string): string => text.split('\n').find((line) => line.includes(item)) ?? '';

describe('the general schedule', () => {
  const finch = binderOf('tests/fixtures/finch-125', '2026-11-14');
  it('stands in a binder beside the maker’s, line by line marked', () => {
    const sheet = sheetSays(finch, 'service-due');
    expect(lineOf(sheet, 'Engine oil and gauze')).not.toContain(general);
    const lines = finch.book.due.filter((line) => line.service.basis === 'general');
    expect(lines.length).toBeGreaterThan(5);
    for (const { service } of lines) expect(lineOf(sheet, service.item)).toContain(general);
    expect(lines.map((line) => line.service.id)).not.toContain('engine-oil-change');
    expect(finch.problems.filter(({ severity }) => severity === 'problem')).toEqual([]);
  });
  it('is the whole schedule of a machine whose maker’s file has none', () => {
    const bare = smallBinder({ 'maker/book.yaml': makerFile('fluids: [{id: gearbox-oil, name: Gearbox oil}]') });
    expect(bare.book.due.every((line) => line.service.basis === 'general')).toBe(true);
    expect(bare.book.due.length).toBeGreaterThan(15);
    const page = pageSays(bare, 'service.html');
    for (const { service } of bare.book.due) expect(lineOf(page, service.item)).toContain(general);
  });
  it('leaves the machine’s own check in its hold point', () => {
    expect(sheetSays(finch, 'hold-points')).toContain('Front lever tied back overnight');
  });
});
