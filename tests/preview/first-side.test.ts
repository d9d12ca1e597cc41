// The small picture of a sheet's first side: all of it inside the page, small, and nothing in it runs.
import { describe, expect, it } from 'vitest';
import { layOut, type PlacedPage } from '../../src/layout/layout.ts';
import { widthOf } from '../../src/pdf/faces.ts';
import { firstSide } from '../../src/preview/first-side.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { everyBlock, sheetOf } from '../pdf/sample-sheets.ts';
import { binderOf } from '../views/binder.ts';

function firstPage(sheet: Sheet): PlacedPage {
  const next = layOut(sheet, { width: widthOf }).next();
  if (next.done === true) throw new Error('no page');
  return next.value;
}

interface Extent {
  readonly right: number;
  readonly bottom: number;
  readonly least: number;
}

/** How far letters and paths of a picture reach. */
function reach(svg: string): Extent {
  const xs: number[] = [];
  const ys: number[] = [];
  for (const [, x, y, wide] of svg.matchAll(/<text x="([\d.-]+)" y="([\d.-]+)"(?: textLength="([\d.]+)")?/g)) {
    xs.push(Number(x), Number(x) + Number(wide ?? 0));
    ys.push(Number(y));
  }
  for (const [, d = ''] of svg.matchAll(/ d="([^"]*)"/g)) {
    for (const [, command, first = '', second] of d.matchAll(/([MLHV])([\d.-]+)(?: ([\d.-]+))?/g)) {
      if (command !== 'V') xs.push(Number(first));
      if (command === 'V') ys.push(Number(first));
      if (second !== undefined) ys.push(Number(second));
    }
  }
  return { right: Math.max(...xs), bottom: Math.max(...ys), least: Math.min(...xs, ...ys) };
}

describe.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('the sheets of %s', (machine) => {
  const { sheets } = binderOf(machine, '2026-11-14');
  it('are drawn inside their page, in at most fifteen thousand characters', () => {
    expect(sheets.length).toBeGreaterThan(30);
    for (const sheet of sheets) {
      const page = firstPage(sheet);
      const svg = firstSide(page, 3);
      const { right, bottom, least } = reach(svg);
      expect(least, sheet.id).toBeGreaterThanOrEqual(0);
      expect(right, sheet.id).toBeLessThanOrEqual(page.width + 0.1);
      expect(bottom, sheet.id).toBeLessThanOrEqual(page.height + 0.1);
      expect(svg.length, sheet.id).toBeLessThanOrEqual(15_000);
    }
  });
});

describe('the picture', () => {
  it('says the title, how many pages there are, and how wide its letters stand', () => {
    const page = firstPage(sheetOf(everyBlock, { title: 'Teardown: rear wheel' }));
    const svg = firstSide(page, 7);
    expect(svg).toMatch(/textLength="[\d.]+" lengthAdjust="spacingAndGlyphs">Teardown: rear wheel</);
    expect(svg).toContain('of 7<');
    expect(svg).toContain(`viewBox="0 0 ${String(Math.round(page.width * 10) / 10)} `);
  });

  it('shows hostile words as words', () => {
    const title = '<script>alert(1)</script> & "x" \u0007 ]]>';
    const svg = firstSide(firstPage(sheetOf(everyBlock, { title })), 1);
    expect(svg).not.toMatch(/<script|\son\w+=|href|style=|url\(/);
    expect(svg).toContain('&lt;script&gt;');
    expect(svg.trimEnd()).not.toMatch(/\p{Cc}/u);
  });

  it('hints at letters where there are too many of them', () => {
    const rows = Array.from({ length: 400 }, (_, index) => `row ${String(index)} of many words that stand here`);
    const placed = firstPage(sheetOf([{ type: 'prose', paragraphs: [{ kind: 'paragraph', text: rows.join('. ') }] }]));
    const more = { ...placed, items: [...placed.items, ...placed.items, ...placed.items, ...placed.items] };
    const svg = firstSide(more, 1);
    expect(svg).not.toContain('row 1 of');
    expect(svg).toContain('fill="#999"');
  });
});
