// The parts of a site: every page is found in its own part, and the contents are known without listing any.
import { expect, test } from 'vitest';
import { composeSite } from '../../src/compose/pages.ts';
import { binderOf } from './binder.ts';

const machines = [
  ['demo-bike', '2026-11-14'],
  ['tests/fixtures/tern-350', '2026-06-01'],
  ['tests/fixtures/finch-125', '2026-06-01'],
] as const;

test.each(machines)('of %s find each page by its name, and no other', (folder, today) => {
  const { book, sheets } = binderOf(folder, today);
  const site = composeSite(book, sheets);
  const all = site.all();
  expect(all.filter((page) => site.named(page.file)?.file !== page.file).map(({ file }) => file)).toEqual([]);
  expect(['jobs/no-such-record.html', 'log-1066.html', 'x.html', ''].filter((file) => site.named(file))).toEqual([]);
  const workings = all.flatMap(({ file, workings: ids = [] }) => ids.map((id) => [id, `${file}#${id}`]));
  expect(workings.map(([id = '']) => [id, site.ofWorking(id)])).toEqual(workings);
});

test.each(machines)('of %s give the first page of every section as the contents', (folder, today) => {
  const { book, sheets } = binderOf(folder, today);
  const site = composeSite(book, sheets);
  const first = new Map<string, string>();
  for (const { file, section } of site.all()) {
    if (!file.includes('/') && !first.has(section)) first.set(section, file);
  }
  expect(site.contents).toEqual([...first].map(([section, file]) => ({ file, title: section, section })));
});
