// A page for each calculation: formula, signs, source, the published rows with what was found, and every use in the binder.
import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/calc/list.ts';
import { coverageOf, provedRows, provedRowsOf } from '../../src/calc/proved-rows.ts';
import type { Block, Page } from '../../src/sheet/sheet.ts';
import { calculationFile } from '../../src/views/calculations.ts';
import { differenceText, rowsOnPage, sixFigures } from '../../src/views/calculation/tested.ts';
import { asSet } from '../../src/views/wording/published-unit.ts';
import { workedFigures } from '../../src/views/wording/worked-figures.ts';
import { plainText } from '../../src/render/text-html.ts';
import { blockText } from '../goldens/sheet-text.ts';
import { binderOf } from './binder.ts';

const today = '2026-11-14';
const pipit = binderOf('demo-bike', today);
const tern = binderOf('tests/fixtures/tern-350', today);

function page(binder: typeof pipit, file: string): Page {
  const spec = binder.pages.find((one) => one.file === file);
  if (spec === undefined) throw new Error('no page ' + file);
  return spec.make();
}

function text(blocks: readonly Block[]): string {
  return blocks.map((block) => blockText(block)).join('\n');
}

/** Formula as it stands on the page, without the setting of its signs. */
function formula(made: Page): string {
  const quotes = made.blocks.flatMap((block) =>
    block.type === 'prose' ? block.paragraphs.filter((one) => one.kind === 'quote') : [],
  );
  return quotes
    .flatMap((one) => one.paragraphs.map((each) => (each.kind === 'paragraph' ? plainText(each.text) : '')))
    .join(' ');
}

/** Anchors of all pages that the workings take; each stands on the page that says so of itself. */
function anchorsOfWorkings({ pages }: typeof pipit): readonly string[] {
  return pages.flatMap(({ file, workings, make }) => {
    if (!/^workings(?:-\d+)?\.html$/.test(file)) return [];
    const anchors = make().blocks.flatMap((block) =>
      block.type === 'table' ? block.rows.flatMap((row) => (row.kind === 'cells' ? (row.id ?? []) : [])) : [],
    );
    expect(new Set(workings), file).toEqual(new Set(anchors));
    return anchors;
  });
}

const squeezed = (words: string): string => words.replaceAll(/[\s;]+/g, ' ').trim();

describe.each(calculations.map((one) => [one.id, one] as const))('the page of %s', (id, one) => {
  const made = page(pipit, calculationFile(id));
  const words = text(made.blocks);
  test('has purpose, formula, range, source and its example', () => {
    expect(words).toContain(one.purpose);
    expect(squeezed(formula(made))).toBe(squeezed(one.formula));
    expect(words).toContain(one.range);
    expect(words).toContain(one.source);
    expect(words).toContain('splitpin work ' + id);
  });
  test('has every sign with its unit, and the words it is written as', () => {
    for (const [name, input] of Object.entries(one.inputs)) {
      expect(words).toContain(name);
      if (input.kind !== 'words' && input.unit.symbol !== '') expect(words).toContain(input.unit.symbol);
    }
  });
  test('has every published row, over its pages, with what was found', () => {
    const rows = provedRowsOf(id);
    const pages = Math.max(1, Math.ceil(rows.length / rowsOnPage));
    const all = Array.from({ length: pages }, (_, index) => text(page(pipit, calculationFile(id, index)).blocks)).join(
      '\n',
    );
    for (const row of rows) {
      expect(all).toContain(asSet(row.states));
      expect(all).toContain(sixFigures(row.computed));
    }
    if (rows.length === 0) expect(all).toContain('No published row is run against this calculation');
    if (rows.length > 0) expect(all).toMatch(rows.length === 1 ? /\b1\s+published row,/ : /\d\s+published rows,/);
  });
});

describe.each([
  ['the demo', pipit],
  ['the four-stroke', tern],
] as const)('uses in %s', (_, binder) => {
  test('every worked-out figure of a calculation stands on its page and in the workings', () => {
    const placed = anchorsOfWorkings(binder);
    const anchors = new Set(placed);
    expect(placed.length, 'a working stands once').toBe(anchors.size);
    const figures = workedFigures(binder.book);
    expect(figures.length).toBeGreaterThan(20);
    expect(new Set(figures.map((one) => one.id)).size).toBe(figures.length);
    for (const { id, figure } of figures) {
      expect(anchors, id).toContain(id);
      if (figure.origin.kind !== 'worked out') throw new Error(id + ' was not worked out');
      const rule = calculations.find(
        (one) => figure.origin.kind === 'worked out' && one.id === figure.origin.working.calculation,
      );
      if (rule !== undefined)
        expect(JSON.stringify(page(binder, calculationFile(rule.id)).blocks)).toContain(`"working:${id}"`);
    }
  });
  test('the sheet of workings is there when it is asked for, and only then', () => {
    expect(binder.sheets.some((sheet) => sheet.id === 'workings')).toBe(false);
  });
});

describe('coverage', () => {
  const words = text(page(pipit, 'coverage.html').blocks);
  test('names every calculation, and the rows that are not run with the reason', () => {
    for (const one of calculations) expect(words).toContain(one.name);
    const reasons = new Set(provedRows().flatMap((row) => (row.state === 'not run' ? [row.why ?? ''] : [])));
    expect(reasons.size).toBeGreaterThan(3);
    for (const reason of reasons) expect(words).toContain(reason);
  });
  test('counts what was run', () => {
    const tested = coverageOf(calculations.map((one) => one.id));
    const run = tested.reduce((sum, one) => sum + one.passed + one.failed, 0);
    const notRun = provedRows().filter((row) => row.state === 'not run').length;
    expect(run + notRun).toBe(provedRows().length);
  });
});

describe('numbers of a row', () => {
  test.each([
    [36.6087, '36.6087'],
    [0.001234561, '0.00123456'],
    [21228.4, '21\u202f228.4'],
    [0, '0'],
    [5, '5'],
  ])('%d with six figures', (value, printed) => {
    expect(sixFigures(value).replaceAll(/\s/gu, ' ')).toBe(printed.replaceAll(/\s/gu, ' '));
  });
  test.each([
    [0.0005, '0.05 %'],
    [-0.00002, '−0.0020 %'],
    [0, '0'],
  ])('a relative difference of %d', (value, printed) => {
    expect(differenceText(value).replaceAll('\u00a0', ' ')).toBe(printed);
  });
});
