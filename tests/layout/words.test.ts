// Words on paper: what is never parted, what is broken with a mark, what is struck out, how cautions differ.
import { describe, expect, it } from 'vitest';
import { breakMark } from '../../src/layout/lines.ts';
import { cleaned } from '../../src/layout/words.ts';
import type { Row } from '../../src/sheet/sheet.ts';
import { everyBlock, sheetOf } from '../pdf/sample-sheets.ts';
import { faults } from './lint-page.ts';
import { itemsOf, pagesOf, steps, textOf, workTable } from './set-pages.ts';

describe('words', () => {
  it('breaks a part number of 200 characters with a visible mark and loses nothing', () => {
    const part = 'XQ7-'.repeat(50);
    const pages = pagesOf(
      sheetOf([workTable(steps(1, part)), { type: 'prose', paragraphs: [{ kind: 'paragraph', text: part }] }], {
        title: 'T',
        machine: part,
      }),
    );
    expect(pages.flatMap(faults)).toEqual([]);
    const marks = itemsOf(pages, 'text').filter((item) => item.text === breakMark);
    expect(marks.length).toBeGreaterThan(2);
    const inProse = pages.map(textOf).join('').replaceAll(' ', '');
    expect(inProse.split(part).length).toBeGreaterThanOrEqual(3);
  });
  it('passes a text over as it is only where looking at each character would have changed nothing', () => {
    for (let code = 0x20; code < 0x3000; code += 1) {
      const character = String.fromCodePoint(code);
      // A line end is always looked at, and a space takes its place.
      const looked = cleaned(character + 'b\n').slice(0, -2);
      if (/\s/.test(character)) expect(cleaned(character + 'b').length, String(code)).toBe(2);
      else expect(cleaned(character), String(code)).toBe(looked);
    }
    expect(cleaned('6\u00a0mm\u2009\u00d7\u00a02\u2002\u03a9')).toBe('6\u00a0mm\u2009\u00d7\u00a02\u2002\u03a9');
    expect(cleaned('a\u00adb\u200e\u0000c')).toBe('abc');
  });
  it('never parts a value from its unit', () => {
    for (let pad = 1; pad < 60; pad += 1) {
      const text = 'x'.repeat(pad) + ' compression was 11.2 bar cold and 6 lbf·ft on M8 × 1.25 then';
      const pages = pagesOf(
        sheetOf(
          [
            {
              type: 'prose',
              paragraphs: [{ kind: 'paragraph', text: [text, ' ', { kind: 'figure', text: '24.5 N·m', mark: 'M' }] }],
            },
          ],
          { paper: 'a5' },
        ),
      );
      const lines = itemsOf(pages, 'text').map((item) => item.text.trimEnd());
      for (const line of lines) expect(line).not.toMatch(/(11\.2|[ \u00a0]6|24\.5|M8|×)$/);
    }
  });
  it('sets the unit behind an empty box, and not behind a value that says its own', () => {
    const row = (written: { readonly found?: string }): readonly string[] =>
      itemsOf(
        pagesOf(
          sheetOf([{ type: 'blanks', items: [{ id: 'bore', item: 'Bore', unit: 'mm', ...written }], empty: '' }]),
        ),
        'text',
      ).map(({ text }) => text.trim());
    const units = (texts: readonly string[]): number => texts.filter((text) => text === 'mm').length;
    expect(units(row({}))).toBe(2);
    expect(row({ found: '2.758\u00a0in' }).join(' ')).toContain('2.758');
    expect(units(row({ found: '2.758\u00a0in' }))).toBe(1);
  });
  it('strikes what was corrected through with one line a text', () => {
    const rows: Row[] = [
      { kind: 'cells', cells: [{ text: 'was' }, { text: [{ kind: 'struck', text: '5 kgf·m' }] }, {}] },
    ];
    const pages = pagesOf(sheetOf([workTable(rows)]));
    const text = itemsOf(pages, 'text').find((item) => item.text.startsWith('5'));
    const through = itemsOf(pages, 'line').filter(
      (line) =>
        text !== undefined &&
        line.y1 < text.y &&
        line.y1 > text.y - text.size * 0.7 &&
        line.x1 < text.x &&
        line.x2 > text.x + text.width,
    );
    expect(through).toHaveLength(1);
  });
  it('tells cautions apart by word and shape', () => {
    const grades = ['WARNING', 'CAUTION', 'NOTE'] as const;
    const shapes = grades.map((grade) => {
      const pages = pagesOf(sheetOf([{ type: 'caution', grade, text: 'Hot.' }]));
      expect(pages.map(textOf).join('')).toContain(grade);
      const frame = itemsOf(pages, 'box').length;
      return (
        frame +
        ':' +
        itemsOf(pages, 'fill')
          .map((fill) => fill.width)
          .join()
      );
    });
    expect(new Set(shapes).size).toBe(3);
  });
  it('prints the sentence for an empty table, and no head', () => {
    const text = pagesOf(
      sheetOf([
        { type: 'table', use: 'read', empty: 'Nothing is off.', columns: [{ head: 'part', width: 1 }], rows: [] },
      ]),
    )
      .map(textOf)
      .join('');
    expect(text).toContain('Nothing is off.');
    expect(text).not.toContain('part');
  });
  it('gives the same pages twice', () => {
    expect(pagesOf(sheetOf(everyBlock))).toEqual(pagesOf(sheetOf(everyBlock)));
  });
});
