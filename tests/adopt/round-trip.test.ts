// From owner to owner and on to a third: the history that was handed over is the history that is gone on with.
import { cpSync, mkdirSync, readFileSync, realpathSync, rmSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, expect, test } from 'vitest';
import { buffer } from 'node:stream/consumers';
import { ZipFile } from 'yazl';
import { readMachine, type ReadMachine } from '../../src/command/read-machine.ts';
import { plainText } from '../evenings/evening.ts';
import { handOver } from '../handover/package-folder.ts';
import { adopt, contents, wagtail, writePackage } from './package.ts';

let around = '';
afterEach(() => rmSync(around, { recursive: true, force: true }));
const begin = (): string => (around = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-round-'))));

const today = '2026-11-20';

/** The sheet of the history as text, without what tells of the handing over itself and of the file it stands in. */
function historyOf(folder: string): string {
  const { binder } = readMachine(folder, today, { copy: 'buyer' });
  const sheet = binder?.sheets.find(({ id }) => id === 'history');
  const text = plainText(sheet?.blocks ?? []);
  const ours = /^.*(?:Taken over|came with a package|From the former owner).*$|\b(?:[0-9a-f]{8} ?){8}/gmu;
  return text.replaceAll(ours, '').replaceAll(/\n{2,}/gu, '\n');
}

function jobsOf(folder: string): Readonly<Record<string, string>> {
  const files = Object.entries(contents(folder));
  return Object.fromEntries(files.filter(([file]) => file.startsWith('jobs/') || file === 'story.md'));
}

function problemsOf({ problems }: ReadMachine): readonly string[] {
  return problems.filter(({ severity }) => severity === 'problem').map(({ code, at }) => `${code} ${at.file}`);
}

test.each(['tests/fixtures/tern-350', 'tests/fixtures/finch-125', 'demo-bike'])(
  '%s: owner, package, next owner: the same records to the byte, the same history, and it goes on',
  { timeout: 600_000 },
  async (from) => {
    begin();
    const owner = join(around, 'owner/bike');
    cpSync(fileURLToPath(new URL(`../../${from}`, import.meta.url)), owner, { recursive: true });
    const handed = await handOver(owner, { yes: true, today });
    expect(handed.code, handed.out).toBe(0);
    const base = join(around, 'owner/out/bike-handover');
    const copy = join(base, 'bike-package/data/records/bike');
    // The next owner has the ZIP and nothing else.
    const zip = join(around, 'new/bike.zip');
    mkdirSync(join(around, 'new'));
    cpSync(join(base, 'bike-package.zip'), zip);
    const { code, said } = await adopt(join(around, 'new'), zip);
    expect(code, said).toBe(0);
    const mine = join(around, 'new/bike');
    expect(jobsOf(mine)).toEqual(jobsOf(copy));
    expect(historyOf(mine)).toBe(historyOf(copy));
    const fingerprint = /fingerprint: (\w+)/u.exec(readFileSync(join(mine, 'adopted.yaml'), 'utf8'))?.[1] ?? 'none';
    expect(handed.out.replaceAll(' ', '')).toContain(fingerprint);
    const read = readMachine(mine, today, {});
    expect(problemsOf(read)).toEqual([]);
    expect(plainText(read.binder?.sheets.find(({ id }) => id === 'history')?.blocks ?? [])).toContain(
      'Taken over on 20 November 2026',
    );
    writeFileSync(
      join(mine, 'jobs/2026-11-20-mine.md'),
      `---\ntitle: Looked over\ndate: ${today}\nkind: service\nstate: done\nhands: [owner]\n---\nMine now.\n`,
    );
    expect(problemsOf(readMachine(mine, today, {}))).toEqual([]);
  },
);

test('it can be handed on again: the third owner’s folder tells of both times', { timeout: 600_000 }, async () => {
  begin();
  const mine = (folder: string, title: string): void =>
    writeFileSync(
      join(folder, `jobs/2026-11-20-${title}.md`),
      `---\ntitle: ${title}\ndate: ${today}\nkind: service\nstate: done\nhands: [owner]\n---\nLooked over.\n`,
    );
  for (const name of ['second', 'third']) mkdirSync(join(around, name));
  const second = join(around, 'second/wagtail');
  expect((await adopt(join(around, 'second'), writePackage(join(around, 'package')))).code).toBe(0);
  mine(second, 'second');
  const handed = await handOver(second, { yes: true, today });
  expect(handed.code, handed.out).toBe(0);
  const zip = join(around, 'second/out/wagtail-handover/wagtail-package.zip');
  expect((await adopt(join(around, 'third'), zip)).code).toBe(0);
  const from = join(around, 'third/wagtail');
  mine(from, 'third');
  const { binder, problems } = readMachine(from, today, {});
  expect(problems.filter(({ severity }) => severity === 'problem')).toEqual([]);
  const adopted = binder?.book.records.adopted;
  expect(adopted?.before.length).toBe(1);
  expect(adopted?.records.map(({ file }) => file)).toContain('jobs/2026-11-20-second.md');
  expect(readFileSync(join(from, 'jobs/2025-05-01-plug.md'), 'utf8')).toBe(wagtail['jobs/2025-05-01-plug.md']);
});

test('a ZIP that reaches out of its folder is refused, and nothing is written anywhere', async () => {
  begin();
  const zip = new ZipFile();
  zip.addBuffer(Buffer.from('BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n'), 'bagit.txt');
  zip.addBuffer(Buffer.from('x'), 'data/records/a/up/up/outside.md');
  zip.end();
  const bytes = (await buffer(zip.outputStream)).toString('latin1').replaceAll('a/up/up/', 'a/../../');
  const path = join(around, 'bad.zip');
  writeFileSync(path, Buffer.from(bytes, 'latin1'));
  mkdirSync(join(around, 'here'));
  const before = contents(around);
  const { code, said } = await adopt(join(around, 'here'), path);
  expect([code, said.includes('outside.md')]).toEqual([1, true]);
  expect(contents(around)).toEqual(before);
});
