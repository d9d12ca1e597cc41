// What a machine's build hands back for the front page: plain data, small, kept for as long as the machine's files are the same.
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { frontLines } from '../../src/compose/front-lines.ts';
import { composeWorkshop } from '../../src/compose/workshop-page.ts';
import { keptTerminal } from '../../src/command/workshop/kept-terminal.ts';
import { buildMachine } from '../../src/command/workshop/machine-build.ts';
import { readMachine } from '../../src/command/read-machine.ts';
import { packageFolder } from '../../src/disk.ts';
import { book, job, part } from '../book/records.ts';
import { put } from '../command/small-machine.ts';
import { blockText } from '../goldens/sheet-text.ts';
import { buildShed, jobOf, named, pageText, record, shed } from './shed.ts';

let folder = '';
afterEach(() => {
  if (folder !== '') rmSync(dirname(folder), { recursive: true, force: true });
  folder = '';
});

test.each(['demo-bike', 'tests/fixtures/tern-350', 'tests/fixtures/finch-125'])(
  'the lines of %s are the same after they were written down and read again',
  (name) => {
    const { binder } = readMachine(join(packageFolder(), name), '2026-11-14', {});
    if (binder === undefined) throw new Error(`${name} cannot be read`);
    const lines = frontLines(name, binder.book);
    const text = JSON.stringify(lines);
    expect(JSON.parse(text)).toEqual(lines);
    expect(text.length).toBeGreaterThan(500);
    expect(text.length).toBeLessThan(60_000);
  },
);

test('they do not grow with the records, only with what is still to be said', () => {
  const done = (count: number) =>
    Array.from({ length: count }, (_, index) => job(`2026-01-0${String((index % 9) + 1)}`));
  const sizeOf = (count: number, wanted: number) => {
    const wants = Array.from({ length: wanted }, (_, index) => part(`seal ${String(index)}`, { state: 'wanted' }));
    const lines = frontLines('one', book([...done(count), job('2026-02-01', { parts: wants })], '2026-06-01'));
    return JSON.stringify({ ...lines, queries: 0, recordsVersion: '' }).length;
  };
  expect(sizeOf(400, 1)).toBe(sizeOf(4, 1));
  expect(sizeOf(4, 9)).toBeGreaterThan(sizeOf(4, 1));
});

const machines = {
  wagtail: { 'machine.yaml': named('Wagtail 125', 'LW125-01234') },
  dunlin: { 'machine.yaml': named('Dunlin 250', 'LD250-00077') },
};

test('a machine whose files are the same is not read again, and one that changed is', async () => {
  folder = shed(machines);
  const { out } = await buildShed(folder);
  const mark = join(out, '.splitpin-workshop.json');
  writeFileSync(mark, readFileSync(mark, 'utf8').replaceAll('"Dunlin 250"', '"Kept from before"'));
  put(join(folder, 'wagtail'), {
    'jobs/a.md': record('Wheel', '2026-05-01', 'parts: [{part: rim tape, state: wanted}]'),
  });
  await buildShed(folder);
  const front = pageText(join(out, 'index.html'));
  expect(front).toContain('Kept from before');
  expect(front).toContain('rim tape');
  put(join(folder, 'dunlin'), { 'jobs/a.md': record('Plug', '2026-05-01') });
  await buildShed(folder);
  expect(pageText(join(out, 'index.html'))).not.toContain('Kept from before');
});

test('a binder that was made by itself before stands on the page all the same', async () => {
  folder = shed(machines);
  const out = join(dirname(folder), 'out/shed');
  const { code } = await buildMachine(jobOf(join(folder, 'dunlin'), join(out, 'dunlin')), keptTerminal(false).terminal);
  expect(code).toBe(0);
  const { said } = await buildShed(folder, out);
  expect(said).toContain('Nothing has changed since it was made');
  expect(pageText(join(out, 'index.html'))).toMatch(/Dunlin 250 .* Wagtail 125/u);
});

test('a mark that is not whole counts for nothing', async () => {
  folder = shed(machines);
  const { out } = await buildShed(folder);
  writeFileSync(join(out, '.splitpin-workshop.json'), '{"key": "half');
  expect((await buildShed(folder)).code).toBe(0);
  expect(pageText(join(out, 'index.html'))).toMatch(/Dunlin 250 .* Wagtail 125/u);
});

test('the front page names the point that each machine is held at first, and how many more there are', () => {
  const lines = ['tern-350', 'finch-125'].map((name) => {
    const { binder } = readMachine(join(packageFolder(), 'tests/fixtures', name), '2026-11-14', {});
    if (binder === undefined) throw new Error(`${name} cannot be read`);
    return frontLines(name, binder.book);
  });
  const page = composeWorkshop({ machines: lines, stopped: [], asked: [], words: [] })
    .blocks.map(blockText)
    .join('\n\n');
  const text = page.replaceAll('\u00a0', ' ');
  expect(text).toContain('Brackwell Tern 350 | Before the engine is turned at all | 1 | 4 more held');
  expect(text).toContain('Tollgate Finch 125 | Before money is spent | 5 | 5 more held');
  expect(text).toMatch(/Brackwell Tern 350 \| Engine oil[^|]*\| overdue \| by date on 20 March 2026, 239 days over/u);
});
