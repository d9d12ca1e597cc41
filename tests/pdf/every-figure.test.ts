// Every figure of every sheet of three machines is found again in the text that a reading program takes from its PDF.
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { sheetText } from '../goldens/sheet-text.ts';
import { binderOf } from '../views/binder.ts';
import { openPdf, pageText } from './read-pdf.ts';
import { sheetOf } from './sample-sheets.ts';

const machines = ['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'];
const sheets = machines.flatMap((machine) =>
  binderOf(machine, '2026-11-21').sheets.map((sheet) => [machine, sheet.id, sheet] as const),
);
const plain = (text: string): string => text.replace(/[\s\u00a0\u2009\u202f]+/gu, ' ');

/** Decimals with the unit that stands after them. */
function figuresOf(text: string): readonly string[] {
  const found = plain(text).matchAll(/\d+\.\d+(?: (?:kgf·m|N·m|lbf·ft|mm|in|bar|psi|ml|V|Ω|kg)(?![\w·]))?/gu);
  return [...new Set([...found].map((one) => one[0]))];
}

/** Points of a plot are drawn, not written. */
const written = (sheet: Sheet): string =>
  sheetText({ ...sheet, blocks: sheet.blocks.filter((one) => one.type !== 'plot') });

/** With fonts that no other file has set anything in. */
let makePdf: typeof import('./read-pdf.ts').makePdf;

async function readBack(sheet: Sheet): Promise<string> {
  const made = await makePdf(sheet);
  const document = await openPdf(made.bytes);
  const pages = await Promise.all(Array.from({ length: made.pages }, (_, index) => pageText(document, index + 1)));
  return plain(pages.join(' '));
}

describe('figures in the text of a PDF', () => {
  // A font meets the point first as part of these signs, and must not forget what it is.
  beforeAll(async () => {
    vi.resetModules();
    ({ makePdf } = await import('./read-pdf.ts'));
    const signs = ['…', ':', ';', '!', '?', '÷', '½', '¾', 'ä', '₂'].join(' ');
    await makePdf(sheetOf([{ type: 'heading', level: 2, id: 'signs', text: signs }]));
  });

  it.each(sheets)('%s: %s', async (_machine, _id, sheet) => {
    const text = await readBack(sheet);
    expect(text).not.toMatch(/[\p{Cc}\p{Co}\ufffd]/u);
    expect(figuresOf(written(sheet)).filter((figure) => !text.includes(figure))).toEqual([]);
  });

  it('keeps the point in each face', async () => {
    const said = await readBack(
      sheetOf([
        { type: 'heading', level: 2, id: 'torque', text: ['… 2.5 kgf·m and ', { kind: 'em', text: '… 0.1719 in' }] },
      ]),
    );
    expect(said).toContain('2.5 kgf·m');
    expect(said).toContain('0.1719 in');
  });
});
