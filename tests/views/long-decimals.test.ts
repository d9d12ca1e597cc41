// No sheet prints a figure with the long tail of a conversion, and a published strength is as fine as it was published.
import { describe, expect, test } from 'vitest';
import { cellDecimals, cellText } from '../../src/table/cell-decimals.ts';
import { published } from '../../src/table/table.ts';
import { printFigure } from '../../src/figure/print.ts';
import { megapascal } from '../../src/quantity/units.ts';
import { blockText } from '../goldens/sheet-text.ts';
import { binderOf } from './binder.ts';

const tail = /.{0,60}\d\.\d{7,}.{0,20}/;

describe.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])('%s', (machine) => {
  test('has no long decimals on any sheet', () => {
    const { sheets } = binderOf(machine, '2026-11-14');
    const found = sheets.flatMap(({ id, blocks }) =>
      blocks.flatMap((block) => {
        const long = tail.exec(blockText(block));
        return long === null ? [] : [id + ': ' + long[0]];
      }),
    );
    expect(found).toEqual([]);
  });
});

describe('a published strength', () => {
  test.each([
    ['grade 2', '379\u00a0MPa'],
    ['grade 8', '827\u00a0MPa'],
    ['8.8', '580\u00a0MPa'],
  ])('of %s prints as %s', (mark, printed) => {
    const strength = published('bolt-classes', mark, 'proof', megapascal);
    expect(strength === undefined ? '' : printFigure(strength)).toBe(printed);
  });
  test('is reckoned with as it stands in the table', () => {
    expect(published('bolt-classes', 'grade 2', 'proof', megapascal)?.quantity).toBeCloseTo(379_211_651.1243, 2);
  });
});

describe('a cell', () => {
  test.each([
    ['1034.2135939753', '1034'],
    ['0.0012345678912', '0.00123'],
    ['98357.651', '98357.651'],
    ['5.794', '5.794'],
    ['M8', 'M8'],
    ['', ''],
  ])('%s is shown as %s', (cell, shown) => {
    expect(cellText(cell)).toBe(shown);
  });
  test('that is nought keeps its decimals', () => {
    expect(cellDecimals(0, 12)).toBe(12);
  });
});
