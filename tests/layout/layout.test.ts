// Sheets on paper: sizes that a hand and an eye need, margins, heads, what stays together and what may be parted.
import { describe, expect, it } from 'vitest';
import { layOut } from '../../src/layout/layout.ts';
import { widthOf } from '../../src/pdf/faces.ts';
import type { Block, Paper } from '../../src/sheet/sheet.ts';
import { longHistory } from '../pdf/long-history.ts';
import { everyBlock, sheetOf } from '../pdf/sample-sheets.ts';
import { faults, inkOf, mm } from './lint-page.ts';
import { itemsOf, pagesOf, steps, textOf, workTable } from './set-pages.ts';

const papers: readonly Paper[] = ['a4', 'letter', 'a5', 'half-letter'];

describe('every block on every paper', () => {
  for (const paper of papers) {
    for (const binding of ['left', 'top'] as const) {
      it('has no fault on ' + paper + ', bound ' + binding, () => {
        const sheet = sheetOf(everyBlock, {
          paper,
          binding,
          foot: 'sign off',
          squareCode: 'pipit/SM',
          leftOut: ['The ride of 2026-05-01 could not be read.'],
          continues: 'AS-1',
        });
        const pages = pagesOf(sheet);
        expect(pages.length).toBeGreaterThan(3);
        expect(pages.flatMap(faults)).toEqual([]);
      });
    }
  }
});

describe('a table with a column that says nothing, not even in its head', () => {
  const travel =
    'Fork travel, from the topped out stop to the bottomed out stop, springs out, both legs alike and straight';
  const row = { kind: 'cells', cells: [{ text: travel }, { text: '' }, { box: 'write', unit: 'mm' }] } as const;
  const columns = [
    { head: '', width: 7 },
    { head: '', width: 3 },
    { head: 'Whole', width: 3.5 },
  ];
  it.each(papers)('keeps its rows on %s', (paper) => {
    const table: Block = { type: 'table', use: 'work', empty: '', columns, rows: [row, row, row] };
    const pages = pagesOf(sheetOf([table], { paper }));
    expect(itemsOf(pages, 'box').filter(({ use }) => use === 'write')).toHaveLength(3);
    expect(
      pages
        .map(textOf)
        .join('')
        .match(/Fork travel/g),
    ).toHaveLength(3);
  });
});

describe('sizes', () => {
  const pages = pagesOf(sheetOf(everyBlock));
  it('draws tick boxes of 5 to 6 mm', () => {
    const boxes = itemsOf(pages, 'box').filter((box) => box.use === 'tick');
    expect(boxes.length).toBeGreaterThan(15);
    for (const box of boxes) {
      expect(box.width / mm).toBeGreaterThanOrEqual(5);
      expect(box.width / mm).toBeLessThanOrEqual(6);
      expect(box.height).toBe(box.width);
    }
  });
  it('draws boxes to write in of at least 25 by 9 mm with their unit after them', () => {
    const boxes = itemsOf(pages, 'box').filter((box) => box.use === 'write');
    expect(boxes.length).toBeGreaterThan(7);
    for (const box of boxes) {
      expect(box.width / mm).toBeGreaterThanOrEqual(25);
      expect(box.height / mm).toBeGreaterThanOrEqual(9);
    }
    const first = boxes[0];
    const page = pages.find((each) => each.items.some((item) => item === first));
    const unit = page?.items.find(
      (item) =>
        item.kind === 'text' &&
        first !== undefined &&
        item.x > first.x + first.width &&
        item.y > first.y &&
        item.y < first.y + first.height,
    );
    expect(unit).toMatchObject({ text: 'mm ' });
  });
  it('sets values large and no text under 9 points', () => {
    const values = itemsOf(pages, 'text').filter(
      (item) => item.text.startsWith('50.00–50.02') || item.text.startsWith('21.6'),
    );
    expect(values.map((item) => item.size)).toEqual([14, 14, 14]);
    expect(Math.min(...itemsOf(pages, 'text').map((item) => item.size))).toBeGreaterThanOrEqual(9);
    expect(itemsOf(pages, 'text').find((item) => item.text.startsWith('Base gasket'))?.size).toBe(11);
  });
  it('gives rows to write in at least 9 mm', () => {
    const ticks = itemsOf(pagesOf(sheetOf([workTable(steps(12))])), 'box');
    const gaps = ticks.slice(1).map((box, index) => box.y - (ticks[index]?.y ?? 0));
    expect(gaps).toHaveLength(11);
    for (const gap of gaps) expect(gap / mm).toBeGreaterThanOrEqual(9);
  });
  it('stands all first lines of a row on one baseline', () => {
    const words = ['M8\u00a0×\u00a01.25 ', '21.6 ', '2.2 ', '15.9 '];
    const row = itemsOf(pages, 'text').filter((item) => words.includes(item.text));
    expect(row.map((item) => item.text)).toEqual(words);
    expect(new Set(row.map((item) => Math.round(item.y * 100))).size).toBe(1);
  });
});

describe('margins', () => {
  it('leaves 20 to 25 mm at the bound side', () => {
    for (const paper of papers) {
      for (const page of pagesOf(sheetOf(longHistory(2), { paper }))) {
        const left = Math.min(...page.items.flatMap((item) => (item.kind === 'text' ? [item.x] : [])));
        expect(left / mm).toBeGreaterThanOrEqual(19.99);
        expect(left / mm).toBeLessThanOrEqual(25);
      }
      const [top] = pagesOf(sheetOf(longHistory(1), { paper, binding: 'top' }));
      const highest = Math.min(
        ...(top?.items.flatMap((item) => (item.kind === 'text' ? [inkOf(item).top] : [])) ?? []),
      );
      expect(highest / mm).toBeGreaterThanOrEqual(20);
    }
  });
  it('puts the wide margin at the right on the back of a leaf', () => {
    const pages = pagesOf(
      sheetOf([
        { type: 'break', to: 'back' },
        { type: 'heading', level: 2, id: 'back', text: 'No start' },
      ]),
    );
    expect(pages).toHaveLength(2);
    const back = pages[1];
    expect(((back?.width ?? 0) - (back?.frame.x ?? 0) - (back?.frame.width ?? 0)) / mm).toBeCloseTo(22, 1);
  });
  it('begins a back that is taken already on a leaf of its own, and leaves no page blank', () => {
    const blocks: Block[] = [
      { type: 'heading', level: 2, id: 'a', text: 'A' },
      { type: 'break', to: 'page' },
      { type: 'heading', level: 2, id: 'b', text: 'B' },
      { type: 'break', to: 'back' },
      { type: 'heading', level: 2, id: 'c', text: 'C' },
    ];
    const pages = pagesOf(sheetOf(blocks));
    expect(pages.map((page) => page.number)).toEqual([1, 2, 3]);
    const texts = pages.map(textOf);
    expect(texts[2]).toContain('C');
    expect(texts.join(' ')).not.toContain('left blank');
  });
});

describe('pages', () => {
  it('has the head on every page: sheet, machine, frame, records, page, where it goes on', () => {
    const pages = pagesOf(sheetOf(longHistory(4), { continues: 'HI-2' }));
    expect(pages.length).toBeGreaterThan(3);
    for (const page of pages) {
      const head = page.items
        .flatMap((item) =>
          item.kind === 'text' && item.tag === undefined ? [item.text] : item.kind === 'total' ? [item.before] : [],
        )
        .join('')
        .replaceAll('\u00a0', ' ');
      for (const part of [
        'SM',
        'Strip the top end',
        'Larkmoor Pipit 175',
        '04417',
        '20 November 2026',
        '3f9a1c',
        'page ' + String(page.number) + ' of',
        'continues at HI-2',
      ])
        expect(head).toContain(part);
    }
  });
  it('repeats the head of a table, keeps rows whole, loses none of 400', () => {
    const pages = pagesOf(sheetOf([workTable(steps(400))]));
    expect(pages.flatMap(faults)).toEqual([]);
    for (const page of pages)
      expect(page.items.some((item) => item.kind === 'text' && item.text === 'remove ')).toBe(true);
    const text = pages.map(textOf).join('');
    for (const index of [1, 17, 399, 400]) expect(text).toContain('Remove the part no. ' + String(index) + ' ');
    expect(itemsOf(pages, 'box')).toHaveLength(400);
  });
  it('splits only a row taller than a page, and says that it goes on', () => {
    const long = Array.from({ length: 900 }, (_, index) => 'word' + String(index)).join(' ');
    const pages = pagesOf(sheetOf([workTable([...steps(2), ...steps(1, long), ...steps(1)])], { paper: 'a5' }));
    expect(pages.flatMap(faults)).toEqual([]);
    const text = pages.map(textOf).join(' ');
    expect(text).toContain('continued');
    for (const index of [0, 450, 899]) expect(text).toMatch(new RegExp('word' + String(index) + '\\b'));
  });
  it('never leaves a heading alone at the foot of a page', () => {
    const blocks = Array.from({ length: 60 }, (_, index): readonly Block[] => [
      { type: 'heading', level: index % 3 === 0 ? 1 : 2, id: 'h' + String(index), text: 'Heading ' + String(index) },
      index % 4 === 0
        ? workTable(steps(1 + (index % 5)))
        : { type: 'prose', paragraphs: [{ kind: 'paragraph', text: 'Some words. '.repeat(1 + index * 2) }] },
    ]).flat();
    const pages = pagesOf(sheetOf(blocks));
    expect(pages.length).toBeGreaterThan(5);
    for (const page of pages) {
      const last = page.items
        .flatMap((item) => (item.kind === 'text' && item.tag !== undefined ? [item.tag.role] : []))
        .at(-1);
      expect(['H1', 'H2', 'H3', 'TH']).not.toContain(last);
    }
  });
  it('puts the sign-off at the foot of the last page', () => {
    const pages = pagesOf(sheetOf([workTable(steps(3))], { foot: 'sign off' }));
    const last = pages.at(-1);
    const label = last?.items.find((item) => item.kind === 'text' && item.text === 'hand ');
    expect(label?.kind === 'text' ? label.y : 0).toBeGreaterThan((last?.height ?? 0) * 0.85);
  });
  it('makes pages one by one', () => {
    const pages = layOut(sheetOf(longHistory(500)), { width: widthOf });
    expect(pages.next().value).toMatchObject({ number: 1 });
    expect(pages.next().value).toMatchObject({ number: 2 });
  });
});
