// Cautions of the calculations: named in the definition, found in the content, and standing on every page that works with it.
import { describe, expect, it } from 'vitest';
import { cautionsOfCalculations } from '../../src/book/cautions-of-calculations.ts';
import { calculations } from '../../src/calc/list.ts';
import { composePages } from '../../src/compose/pages.ts';
import { composeSheets } from '../../src/compose/sheets.ts';
import { benchWorkings } from '../../src/views/bench/workings-at-bench.ts';
import { binderOf, day } from './binder.ts';

const { book } = binderOf('demo-bike', day('2026-11-14'));
const pages = composePages(book, composeSheets(book, {}).value);

/** Cautions of a page in its order, each by its grade and text. */
function cautionsOf(file: string): readonly string[] {
  const blocks = pages.find((page) => page.file === file)?.make().blocks ?? [];
  return blocks.flatMap((block) => (block.type === 'caution' ? [`${block.grade} ${block.text}`] : []));
}

function expected(ids: readonly string[]): readonly string[] {
  return cautionsOfCalculations(book.content, ids).map(({ grade, line }) => `${grade} ${line}`);
}

/** Pure arithmetic of air, dates and sizes, where nothing is touched. */
const nothingTouched = [
  'displacement',
  'standard-atmosphere',
  'humid-air',
  'saturation-pressure',
  'rolling-circumference',
  'months-from',
];

describe('cautions of calculations', () => {
  it('are all in the content, and only where nothing is touched is there none', () => {
    for (const { id, cautions } of calculations)
      for (const caution of cautions) expect(book.content.cautions.has(caution), `${id}: ${caution}`).toBe(true);
    const without = calculations.filter(({ cautions }) => cautions.length === 0).map(({ id }) => id);
    expect(without.toSorted()).toEqual(nothingTouched.toSorted());
  });

  it.each(calculations.map(({ id }) => id))('%s has them on its page, the gravest first', (id) => {
    expect(cautionsOf(`calculations/${id}.html`)).toEqual(expected([id]));
  });

  it.each(benchWorkings.map(({ id, calculations: ids }) => [id, ids] as const))(
    'the working %s has those of all its calculations, each once',
    (id, ids) => {
      const found = cautionsOf(`bench/${id}.html`);
      expect(found.length).toBeGreaterThan(0);
      expect(found).toEqual(expected(ids));
      expect(new Set(found).size).toBe(found.length);
      const grades = found.map((text) => ['WARNING', 'CAUTION', 'NOTE'].indexOf(text.split(' ')[0] ?? ''));
      expect(grades).toEqual(grades.toSorted((one, other) => one - other));
    },
  );
});
