// The compiled tables are the files in shared/, and every table says where it comes from and what it is used for.
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { calculations } from '../../src/calc/list.ts';
import { cellNumber, published, table, tableIds } from '../../src/table/table.ts';
import { compileTables } from '../../src/tools/tables.ts';
import { megapascal, millimetre } from '../../src/quantity/units.ts';

const shared = new URL('../../shared/', import.meta.url);
const files = readdirSync(shared).filter((name) => name.endsWith('.csv'));

describe('compiled tables', () => {
  test('equal the files', () =>
    expect(readFileSync(new URL('../../src/table/compiled.ts', import.meta.url), 'utf8')).toBe(compileTables()));
  test('there is one for each file', () => {
    expect(files.length).toBeGreaterThan(20);
    expect(tableIds).toEqual(files.map((name) => name.slice(0, -4)).toSorted());
  });
});

describe.each(tableIds)('%s', (id) => {
  const { about, rows, columns } = table(id);
  test('has a head and rows with ids of their own', () => {
    for (const text of [about.title, about.edition, about.number, about.obtained, about.units, about.use])
      expect(String(text)).not.toBe('');
    expect(rows.length).toBeGreaterThan(0);
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    expect(columns.some((column) => column.name === 'source')).toBe(true);
  });
  test('says of each row how it was obtained and from where', () => {
    for (const row of rows) {
      expect(['read', 'library', 'computed', 'memory'], row.id).toContain(row.cells['how']);
      expect(row.source, row.id).not.toBe('');
      if (about.sources === undefined) continue;
      for (const source of row.source.split(' ')) expect(Object.keys(about.sources), row.id).toContain(source);
    }
  });
  test('is used by a calculation', () =>
    expect(calculations.some((calculation) => calculation.tables.includes(id)) || id === 'values-units').toBe(true));
});

describe('a cell', () => {
  test('is a figure that knows its row', () => {
    const figure = published('bolt-classes', '8.8', 'proof', megapascal);
    expect(figure).toMatchObject({ quantity: 580e6, origin: { kind: 'published', table: 'bolt-classes', row: '8.8' } });
  });
  test('in another unit than its column is a bug', () =>
    expect(() => published('bolt-classes', '8.8', 'proof', millimetre)).toThrow(/not in mm/));
  test('that is blank has no number', () => expect(cellNumber('bolt-classes', 'A2-70', 'proof')).toBeUndefined());
  test('of a table that is not there is a bug', () => expect(() => table('none')).toThrow(/no table/));
});
