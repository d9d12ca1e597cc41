// The shelves are complete: every file of a shelf is in its list, every view is used, every sheet file names views that exist.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root, sourceFiles, targetOf } from './source-files.ts';
import { viewNamed, views } from '../../src/views/list.ts';
import { viewsOnPages } from '../../src/compose/site-pages.ts';

/** Folder, its list, and what a file of the shelf has in it. */
const shelves = [
  { folder: 'src/views', list: 'src/views/list.ts', declares: /\bdefineView\(\{/ },
  { folder: 'src/calc', list: 'src/calc/list.ts', declares: /\bcalculation\(\{/ },
  { folder: 'src/records/kinds', list: 'src/records/kinds/list.ts', declares: /\bdefineRecord<.*>\(\{/ },
] as const;

describe.each(shelves)('the shelf $folder', ({ folder, list, declares }) => {
  const present = existsSync(join(root, list));
  test('has a list', () => {
    expect(present, `${list} is missing`).toBe(true);
  });
  test.runIf(present)('holds in its list every file that declares something', () => {
    const listed = new Set(
      sourceFiles(folder)
        .find(({ file }) => file === list)
        ?.imports.map((one) => targetOf(list, one)),
    );
    const declaring = sourceFiles(folder).filter(({ file, text }) => file !== list && declares.test(text));
    expect(declaring.length).toBeGreaterThan(1);
    const missing = declaring.filter(({ file }) => !listed.has(file));
    expect(missing.map(({ file }) => `${file} is not in ${list}: a new thing is one file and one line`)).toEqual([]);
  });
});

describe('views and sheets', () => {
  const folder = join(root, 'content/sheets');
  const sheets = readdirSync(folder).map((name) => readFileSync(join(folder, name), 'utf8'));
  test('ids are unique and say what they show', () => {
    expect(new Set(views.map((view) => view.id)).size).toBe(views.length);
    for (const view of views) expect(view.purpose, view.id).toMatch(/^[A-Z].{15,}\.$/);
  });
  test('every view is shown on a sheet or a page', () => {
    const onSheets = sheets.join('\n');
    const unused = views.filter(
      (view) => !viewsOnPages.has(view.id) && !new RegExp(`[[{\\s]${view.id}[\\],:\\s]`).test(onSheets),
    );
    // Shown by pages of their own: a page for each record and for each year of the log, one for each published table.
    const ownPages = new Set(['job-story', 'log', 'tables']);
    expect(unused.map((view) => view.id).filter((id) => !ownPages.has(id))).toEqual([]);
  });
  test('a view is found by its id and by nothing else', () => {
    expect(viewNamed('torque-table')?.id).toBe('torque-table');
    expect(viewNamed('torque table')).toBeUndefined();
  });
});
