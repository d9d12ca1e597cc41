// Every sheet of three machines as text, held against what was last read over by a person. `UPDATE_GOLDENS=1` writes them anew.
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { composeSheets } from '../../src/compose/sheets.ts';
import { binderOf } from '../views/binder.ts';
import { sheetText } from './sheet-text.ts';

const here = dirname(fileURLToPath(import.meta.url));
const update = process.env['UPDATE_GOLDENS'] === '1';

/** A two-stroke twin with points; a four-stroke twin with inch threads; a four-stroke single with a disc, on half sheets. */
const machines = [
  { folder: 'demo-bike', today: '2026-11-21', goldens: 'sheets' },
  { folder: 'tests/fixtures/tern-350', today: '2026-11-21', goldens: 'sheets-tern-350' },
  { folder: 'tests/fixtures/finch-125', today: '2026-11-21', goldens: 'sheets-finch-125' },
] as const;

describe.each(machines)('sheets of $folder as text', ({ folder, today, goldens }) => {
  const { book } = binderOf(folder, today);
  // What is made only by its name as well; the workings have tests of their own.
  const sheets = composeSheets(book, { workings: true }).value.filter(({ id }) => id !== 'workings');
  const into = join(here, goldens);
  mkdirSync(into, { recursive: true });
  const kept = readdirSync(into).filter((name) => name.endsWith('.txt'));

  test.each(sheets.map((sheet) => [sheet.id, sheet] as const))('%s', (id, sheet) => {
    const file = join(into, `${id}.txt`);
    const text = sheetText(sheet);
    if (update) writeFileSync(file, text);
    expect(existsSync(file), `${id} has no golden: read the sheet over, then UPDATE_GOLDENS=1`).toBe(true);
    expect(text).toBe(readFileSync(file, 'utf8'));
  });
  test('no golden is left of a sheet that is gone', () => {
    const gone = kept.filter((name) => !sheets.some((sheet) => `${sheet.id}.txt` === name));
    if (update) gone.forEach((name) => rmSync(join(into, name)));
    expect(update ? [] : gone).toEqual([]);
  });
});

test('the three machines have the same kinds of sheet, each of them', () => {
  const codes = machines.map(({ folder, today }) => binderOf(folder, today).sheets.map(({ code }) => code));
  const [first, ...others] = codes.map((list) => [...new Set(list)].toSorted());
  expect(first?.length).toBeGreaterThan(30);
  for (const other of others) expect(other).toEqual(first);
});
