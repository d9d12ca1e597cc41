// The original part that was kept when another was fitted: in the originality table, counted out to the next owner, found by its tub.
import { describe, expect, it } from 'vitest';
import { recordTables } from '../../src/handover/tables.ts';
import { pageSays, record, sheetSays, smallBinder } from './small-folder.ts';

const fitted = (more: string): Readonly<Record<string, string>> => ({
  'jobs/2026-05-01-clock.md': record(`title: Clock
date: 2026-05-01
kind: repair
state: done
parts:
  - {part: speedometer in miles, class: used, from: a breaker, state: fitted, instead of: the first speedometer${more}}`),
});

describe('the original', () => {
  it('is named with its place in the originality table, the record and the tables, and counted out to the next owner', () => {
    const binder = smallBinder(fitted(', original kept: tub 2'));
    expect(sheetSays(binder, 'originality')).toMatch(
      /speedometer in miles \| the first speedometer \| used \| 1 May 2026, Clock \| tub 2/u,
    );
    expect(pageSays(binder, 'jobs/2026-05-01-clock.html')).toContain(
      'instead of the first speedometer, original kept: tub 2',
    );
    expect(sheetSays(binder, 'parts-and-tubs')).toMatch(
      /Originals that were kept[\s\S]*\[ \] \| the first speedometer \| tub 2 \| speedometer in miles \| Clock/u,
    );
    const parts = recordTables(binder.book).find(({ file }) => file === 'parts.csv')?.text ?? '';
    expect(parts).toMatch(/instead of,original kept\r\n.*the first speedometer,tub 2\r\n/u);
  });
  it('is said to be gone, and is then not counted out', () => {
    const binder = smallBinder(fitted(', original kept: no'));
    expect(sheetSays(binder, 'originality')).toMatch(/Clock \| not kept/u);
    expect(pageSays(binder, 'jobs/2026-05-01-clock.html')).toContain('original not kept');
    expect(sheetSays(binder, 'parts-and-tubs')).not.toContain('Originals that were kept');
  });
  it.each(['', ', original kept: "?"'])('stays room to write where nobody said it (%j)', (more) => {
    const binder = smallBinder(fitted(more));
    expect(sheetSays(binder, 'originality')).toMatch(/1 May 2026, Clock \|\s*$/mu);
    expect(sheetSays(binder, 'parts-and-tubs')).not.toContain('Originals that were kept');
  });
});
