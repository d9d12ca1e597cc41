// No page of a served binder is ever stale: after every edit, each page is what a binder opened afresh on the same records gives.
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, expect, test, vi } from 'vitest';
import { openLiveBinder, type LiveBinder } from '../../src/command/live-binder.ts';
import { printFile } from '../../src/command/write-prints.ts';
import { put, small, smallMachine } from './small-machine.ts';

const scratch = mkdtempSync(join(tmpdir(), 'splitpin-snapshots-'));
const opened: LiveBinder[] = [];
afterAll(() => {
  for (const live of opened) live.close();
  rmSync(scratch, { recursive: true, force: true });
});

async function open(machine: string): Promise<LiveBinder> {
  const live = await openLiveBinder({ machine, today: () => '2024-06-01', options: {}, script: '/-/live.js' });
  opened.push(live);
  return live;
}

/** With every module begun anew, so that nothing kept anywhere is taken over. */
async function openAfresh(machine: string): Promise<LiveBinder> {
  vi.resetModules();
  const afresh = await import('../../src/command/live-binder.ts');
  const live = await afresh.openLiveBinder({ machine, today: () => '2024-06-01', options: {}, script: '/-/live.js' });
  opened.push(live);
  return live;
}

type Pages = Readonly<Record<string, string>>;

/** Every page under its name; those of the manual and of published tables, which no record changes, only when asked for. */
async function pagesOf(live: LiveBinder, fixed: boolean): Promise<Pages> {
  const pages: Record<string, string> = {};
  for (const { file, section } of live.reading().binder?.pages ?? []) {
    const changes = section !== 'Manual' && !file.startsWith('tables/');
    if (changes || fixed) pages[file] = String((await live.file(file))?.body);
  }
  return pages;
}

/** Every sheet as its PDF. */
async function printsOf(live: LiveBinder): Promise<Pages> {
  const prints: Record<string, string> = {};
  for (const sheet of live.reading().binder?.sheets ?? []) {
    const file = printFile(sheet);
    prints[file] = Buffer.from((await live.file(file))?.body ?? '').toString('latin1');
  }
  return prints;
}

/** Names of files that stand on one side only or say something else there. */
const differing = (fresh: Pages, served: Pages): readonly string[] =>
  [...new Set([...Object.keys(fresh), ...Object.keys(served)])].filter((file) => fresh[file] !== served[file]);

const gap = (found: string, title: string, day: string, part: string): string => `---
title: ${title}
date: ${day}
kind: measuring
state: done
odometer: 1010 mi
readings:
  - {item: ring-gap, found: ${found}}
  - {item: kick shaft play, found: 0.4 mm, left: 0.2 mm}
parts:
  - {part: ${part}, number: "12-345", price: 4.50 GBP, state: fitted}
  - {part: gasket, state: wanted}
---
The gap was read cold.
`;

const machineFile = small['machine.yaml'] ?? '';
const measured = 'jobs/2024-04-20-measured.md';
const later = 'jobs/2024-05-02-measured.md';
const before = gap('0.30 mm', 'Rings measured', '2024-04-20', 'piston ring');

interface Edit {
  readonly name: string;
  readonly file: string;
  /** Absent: the file is taken away. */
  readonly text?: string;
  /** What the watch tells: the file was written to; or that files came or went. */
  readonly told: 'written' | 'moved';
}

const edits: readonly Edit[] = [
  { name: 'title', file: measured, text: before.replace('Rings measured', 'Rings read'), told: 'written' },
  { name: 'reading', file: measured, text: before.replace('0.30 mm', '0.95 mm'), told: 'written' },
  { name: 'part', file: measured, text: before.replace('piston ring', 'gudgeon pin'), told: 'written' },
  { name: 'price', file: measured, text: before.replace('4.50', '9.75'), told: 'written' },
  { name: 'body', file: measured, text: before.replace('read cold', 'read warm'), told: 'written' },
  { name: 'date', file: measured, text: before.replace('date: 2024-04-20', 'date: 2024-05-20'), told: 'written' },
  { name: 'odometer', file: measured, text: before.replace('1010 mi', '1005 mi'), told: 'written' },
  { name: 'new file', file: 'jobs/2024-05-10-new.md', text: before.replace('Rings', 'New rings'), told: 'moved' },
  { name: 'removed file', file: later, told: 'moved' },
  { name: 'broken file', file: measured, text: before.replace('0.30 mm', '0,3,0 mm'), told: 'written' },
  { name: 'mended file', file: measured, text: before.replace('0.30 mm', '0.31 mm'), told: 'written' },
  {
    name: "maker's limit",
    file: 'maker/book.yaml',
    text: `splitpin: 1
source: {title: Test book, edition: "1970"}
fasteners:
  - {id: head-nut, name: Head nuts, of: head, thread: M8x1.25, count: 4, torque: 24 N·m, page: 3}
limits:
  - {id: ring-gap, name: Gap of the rings, unit: mm, standard: 0.10 to 0.20 mm, limit: 0.30 mm max, of: piston ring, page: 4}
`,
    told: 'written',
  },
  { name: 'renewed after it', file: later, text: before.replace('2024-04-20', '2024-05-02'), told: 'moved' },
  {
    name: 'name of the machine',
    file: 'machine.yaml',
    text: machineFile.replace('Test machine', 'Übung'),
    told: 'written',
  },
  {
    name: 'its units',
    file: 'machine.yaml',
    text: machineFile.replace('units: metric', 'units: imperial'),
    told: 'written',
  },
  {
    name: 'its clock',
    file: 'machine.yaml',
    text: machineFile.replace('reads: 900 mi', 'reads: 0 mi'),
    told: 'written',
  },
  { name: 'its story', file: 'story.md', text: 'It stood under a tarpaulin for years.\n', told: 'moved' },
  {
    name: 'instruments',
    file: 'instruments.yaml',
    text: 'splitpin: 1\ninstruments: [{id: feelers, name: Feeler gauges, accuracy: 0.05 mm}]\n',
    told: 'moved',
  },
  {
    name: 'instrument used',
    file: later,
    text: before.replace('0.30 mm}', '0.31 mm, instrument: feelers}'),
    told: 'written',
  },
  {
    name: 'plan',
    file: 'jobs/2024-06-10-wheel.md',
    text: '---\ntitle: Wheel\ndate: 2024-06-10\nkind: strip\nstate: planned\nprocedures: [wheel-rear-out]\n---\n',
    told: 'moved',
  },
];

test('gives the pages of a binder opened afresh after every edit', async () => {
  const machine = smallMachine({ [measured]: before, [later]: gap('0.42 mm', 'Again', '2024-05-02', 'stud') });
  const live = await open(machine);
  const first = await pagesOf(live, true);
  const seen: { readonly edit: Edit; readonly pages: Pages; readonly snapshot: string; readonly good: boolean }[] = [];
  // The server is asked first and everything afresh only afterwards, so that nothing it kept is put right between the edits.
  for (const [index, edit] of edits.entries()) {
    const absolute = join(machine, edit.file);
    if (edit.text === undefined) rmSync(absolute);
    else if (edit.told === 'written') writeFileSync(absolute, edit.text);
    else put(machine, { [edit.file]: edit.text });
    const good = await live.refresh(edit.told === 'written' ? [absolute] : undefined);
    const snapshot = join(scratch, String(index), basename(machine));
    cpSync(machine, snapshot, { recursive: true });
    seen.push({ edit, pages: await pagesOf(live, index === edits.length - 1), snapshot, good });
  }
  expect(seen.filter(({ good }) => !good).map(({ edit }) => edit.name)).toEqual(['broken file']);
  const prints = await printsOf(live);
  expect(Object.keys(prints).length).toBeGreaterThan(10);
  let last: Pages = first;
  for (const { edit, pages, snapshot, good } of seen) {
    const fixed = edit === edits.at(-1);
    const afresh = good ? await openAfresh(snapshot) : undefined;
    const fresh = afresh === undefined ? last : await pagesOf(afresh, fixed);
    if (fixed && afresh !== undefined) expect(differing(await printsOf(afresh), prints)).toEqual([]);
    const stale = Object.keys(fresh).filter((file) => file in pages && pages[file] !== fresh[file]);
    expect([edit.name, stale]).toEqual([edit.name, []]);
    if (good) expect([edit.name, Object.keys(pages)]).toEqual([edit.name, Object.keys(fresh)]);
    // An edit that changed no page would prove nothing.
    const changed = Object.keys(fresh).filter((file) => file in last && fresh[file] !== last[file]);
    expect([edit.name, changed.length > 0]).toEqual([edit.name, good]);
    if (good) last = fresh;
  }
});
