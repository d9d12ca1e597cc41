// A workshop built whole: each machine’s binder and the front page; one bad record stops one binder and no other.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { keptTerminal } from '../../src/command/workshop/kept-terminal.ts';
import { buildMachine } from '../../src/command/workshop/machine-build.ts';
import { machineThreads, makeInThreads } from '../../src/command/workshop/machine-threads.ts';
import type { ToldMachine } from '../../src/command/workshop/told-machine.ts';
import { put } from '../command/small-machine.ts';
import { buildShed, filesIn, jobOf, named, pageText, record, shed, type Machines } from './shed.ts';

const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(dirname(folder), { recursive: true, force: true });
});
function workshop(machines: Machines, shared: Readonly<Record<string, string>> = {}): string {
  const folder = shed(machines, shared);
  made.push(folder);
  return folder;
}

const wagtail = { 'machine.yaml': named('Wagtail 125', 'LW125-01234') };
const dunlin = { 'machine.yaml': named('Dunlin 250', 'LD250-00077') };
const pipit = { 'machine.yaml': named('Pipit 175', 'LP175-04417') };

test('one bad record stops one binder, not the others; the exit code and the front page say so', async () => {
  const folder = workshop({
    wagtail,
    dunlin: { ...dunlin, 'jobs/plug.md': record('Plug', '2026-05-01') },
    pipit,
  });
  expect((await buildShed(folder)).code).toBe(0);
  put(join(folder, 'dunlin'), { 'jobs/points.md': record('Points', 'the first of May') });
  put(join(folder, 'pipit'), { 'jobs/points.md': record('Points', '2026-05-02') });
  const { code, said, out } = await buildShed(folder);
  expect(code).toBe(1);
  expect(said).toContain('jobs/points.md:3:7 date-unreadable');
  expect(said).toContain('shed: 2 binders of 3 machines');
  expect(said).toContain('Not made: dunlin');
  expect(existsSync(join(out, 'pipit/jobs/points.html'))).toBe(true);
  expect(existsSync(join(out, 'dunlin/jobs/plug.html'))).toBe(true);
  expect(existsSync(join(out, 'dunlin/jobs/points.html'))).toBe(false);
  const front = pageText(join(out, 'index.html'));
  expect(front).toContain('Dunlin 250 (dunlin) : not made anew, 1 problem in its records');
  expect(front).toMatch(/Pipit 175 .* Wagtail 125/u);
});

test('a machine whose machine.yaml cannot be read does not stop the others either', async () => {
  const folder = workshop({ wagtail, dunlin: { 'machine.yaml': 'splitpin: 1\nname: {' } });
  const { code, out } = await buildShed(folder);
  expect(code).toBe(1);
  expect(pageText(join(out, 'index.html'))).toContain('dunlin : not made anew, 1 problem');
  expect(existsSync(join(out, 'wagtail/index.html'))).toBe(true);
});

test('every link of the front page leads to a file that is there', async () => {
  const folder = workshop({
    'Größe 1': { ...wagtail, 'jobs/out.md': record('Out', '2026-05-01', 'parts: [{part: tank, moved to: dunlin}]') },
    dunlin,
  });
  const { out } = await buildShed(folder);
  const links = [...readFileSync(join(out, 'index.html'), 'utf8').matchAll(/(?:href|src)="([^"#]+)[^"]*"/gu)].map(
    (match) => decodeURIComponent(match[1] ?? ''),
  );
  expect(links.filter((link) => link.startsWith('Größe 1/')).length).toBeGreaterThan(4);
  expect(links.filter((link) => !existsSync(join(out, link)))).toEqual([]);
});

test('shared instruments, the shelf and one list of what to get stand on it', async () => {
  const wants = (part: string) =>
    record('Wheel', '2026-05-01', `parts: [{part: ${part}, state: wanted, from: bearing shop}]`);
  const folder = workshop(
    {
      wagtail: { ...wagtail, 'jobs/a.md': wants('wheel bearing') },
      dunlin: { ...dunlin, 'jobs/a.md': wants('wheel bearing') },
    },
    {
      'instruments.yaml': 'splitpin: 1\ninstruments: [{id: feelers, name: Feeler gauges}]\n',
      'workshop.yaml': 'splitpin: 1\nstock: [{part: split pin 3.2×32, count: 12}]\n',
    },
  );
  const { code, out } = await buildShed(folder);
  expect(code).toBe(0);
  const front = pageText(join(out, 'index.html'));
  expect(front).toMatch(/bearing shop .*2 × wheel bearing .*Dunlin 250, Wheel; Wagtail 125, Wheel/u);
  expect(front).toMatch(/On the shelf, for every machine .* split pin 3\.2×32 12/u);
  expect(front).toContain('Feeler gauges');
});

test('nothing is written into a machine folder or the workshop, and what stands is told of again', async () => {
  const folder = workshop({ wagtail, dunlin: { ...dunlin, 'machine.yaml': named('Dunlin 250', 'LW125 01234') } });
  const before = filesIn(folder);
  const first = await buildShed(folder);
  const again = await buildShed(folder);
  expect(filesIn(folder)).toEqual(before);
  expect(first.said).toContain('number-on-two-machines');
  expect(again.said).toContain('Nothing has changed since it was made');
  expect(again.said).toContain('number-on-two-machines');
});

test('a front page is never put where it is not ours to put it', async () => {
  const folder = workshop({ wagtail, dunlin });
  const out = join(dirname(folder), 'out/shed');
  mkdirSync(out, { recursive: true });
  writeFileSync(join(out, 'index.html'), 'mine');
  const refused = await buildShed(folder);
  expect([refused.code, readFileSync(join(out, 'index.html'), 'utf8')]).toEqual([1, 'mine']);
  expect(refused.said).toContain('output-not-ours');
  const among = await buildShed(folder, folder);
  expect(among.code).toBe(1);
  expect(Object.keys(filesIn(folder))).toEqual(['dunlin/machine.yaml', 'wagtail/machine.yaml']);
  const assets = workshop({ assets: wagtail, dunlin });
  const taken = await buildShed(assets);
  expect([taken.code, taken.said.includes('A machine folder is called assets')]).toEqual([1, true]);
  expect(existsSync(join(taken.out, 'assets/index.html'))).toBe(true);
});

test('the files are the same whether threads make them or this one; a machine that brings its thread down stops no other', async () => {
  const folder = workshop({ wagtail, dunlin: { ...dunlin, 'jobs/plug.md': record('Plug', '2026-05-01') } });
  const base = dirname(folder);
  const names = ['wagtail', 'dunlin'];
  for (const name of names) {
    const { terminal } = keptTerminal(false);
    const { code } = await buildMachine(jobOf(join(folder, name), join(base, 'turn', name)), terminal);
    expect(code).toBe(0);
  }
  const results = new Map<number, ToldMachine>();
  const handed = ['gone', ...names].map((name) => ({
    job: { ...jobOf(join(folder, name), join(base, 'threads', name)), printThreads: 0 },
    colour: false,
  }));
  await makeInThreads(handed, 2, (index, one) => results.set(index, one));
  expect([0, 1, 2].map((index) => results.get(index)?.code)).toEqual([70, 0, 0]);
  expect(results.get(0)?.lines[0]?.line).toBe('A fault of this program, not of your records. No output was changed.');
  const outputs = (file: string): boolean => !file.endsWith('.splitpin.json');
  const inTurn = filesIn(join(base, 'turn'), outputs);
  expect(Object.keys(inTurn).length).toBeGreaterThan(100);
  expect(filesIn(join(base, 'threads'), outputs)).toEqual(inTurn);
});

test('there are no more threads than cores or machines, and none for one of either', () => {
  expect([machineThreads(20, 4), machineThreads(3, 8), machineThreads(1, 8), machineThreads(20, 1)]).toEqual([
    4, 3, 0, 0,
  ]);
});
