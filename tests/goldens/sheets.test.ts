// Every sheet of the demo as text, held against what was last read over by a person. `UPDATE_GOLDENS=1` writes them anew.
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { binderOf } from '../views/binder.ts';
import { sheetText } from './sheet-text.ts';

const folder = join(dirname(fileURLToPath(import.meta.url)), 'sheets');
const update = process.env['UPDATE_GOLDENS'] === '1';
const { sheets } = binderOf('demo-bike', '2026-11-21');

mkdirSync(folder, { recursive: true });
const kept = readdirSync(folder).filter((name) => name.endsWith('.txt'));

describe('sheets of the demo as text', () => {
  test.each(sheets.map((sheet) => [sheet.id, sheet] as const))('%s', (id, sheet) => {
    const file = join(folder, `${id}.txt`);
    const text = sheetText(sheet);
    if (update) writeFileSync(file, text);
    expect(existsSync(file), `${id} has no golden: read the sheet over, then UPDATE_GOLDENS=1`).toBe(true);
    expect(text).toBe(readFileSync(file, 'utf8'));
  });
  test('no golden is left of a sheet that is gone', () => {
    const gone = kept.filter((name) => !sheets.some((sheet) => `${sheet.id}.txt` === name));
    if (update) gone.forEach((name) => rmSync(join(folder, name)));
    expect(update ? [] : gone).toEqual([]);
  });
});
