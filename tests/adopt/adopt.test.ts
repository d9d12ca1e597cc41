// Adopting a package: what the new owner gets, what is refused with words, and what is left behind when it breaks off.
import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { readMachine } from '../../src/command/read-machine.ts';
import { writeZip } from '../../src/command/zip/write-zip.ts';
import { findMachines } from '../../src/disk.ts';
import { adopt, contents, filesBelow, wagtail, writePackage } from './package.ts';

let around = '';
let here = '';
beforeEach(() => {
  around = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-adopt-')));
  here = join(around, 'workshop');
  mkdirSync(here);
});
afterEach(() => rmSync(around, { recursive: true, force: true }));

const packed = (records?: Readonly<Record<string, string>>): string => writePackage(join(around, 'package'), records);
const put = (file: string, text: string): void => {
  mkdirSync(join(here, file, '..'), { recursive: true });
  writeFileSync(join(here, file), text);
};
const codesOf = (folder: string): readonly string[] =>
  readMachine(join(here, folder), '2026-11-20', {}).problems.map(({ code, at }) => `${code} ${at.file}`);

test('history stays as it came, plans are the new owner’s, and what was left out is named', async () => {
  const { code, said } = await adopt(here, packed());
  expect(code).toBe(0);
  expect(said).toContain('adopted into wagtail, 2 job records and no photos');
  expect(said).toContain('2 files of history stay as they came');
  expect(said).toContain('yours to go on with: 2025-06-01-wheel');
  expect(said).toContain('written into wagtail/machine.yaml: key number');
  const { 'adopted.yaml': mark = '', ...came } = contents(join(here, 'wagtail'));
  expect(came).toEqual(
    Object.fromEntries(Object.entries(wagtail).map(([file, text]) => [file, Buffer.from(text).toString('latin1')])),
  );
  expect(mark).toContain('date: 2026-11-20\n');
  expect(mark.match(/file: (\S+),/gu)).toEqual(['file: jobs/2025-05-01-plug.md,', 'file: story.md,']);
  expect(statSync(join(here, 'wagtail/jobs/2025-05-01-plug.md')).mode & 0o777).toBe(0o444);
  expect(statSync(join(here, 'wagtail/jobs/2025-06-01-wheel.md')).mode & 0o200).toBe(0o200);
  expect(readMachine(join(here, 'wagtail'), '2026-11-20', {}).binder?.book.records.adopted?.records.length).toBe(2);
});

test('check refuses a change to what came, and one of it that is gone; a correction is a record of one’s own', async () => {
  await adopt(here, packed());
  const plug = join(here, 'wagtail/jobs/2025-05-01-plug.md');
  put(
    'wagtail/jobs/2026-11-21-put-right.md',
    '---\ntitle: Put right\ndate: 2026-11-21\nkind: service\nstate: done\ncontinues: 2025-05-01-plug\n---\nIt was oily.\n',
  );
  expect(codesOf('wagtail').filter((one) => one.startsWith('adopted'))).toEqual([]);
  rmSync(plug);
  expect(codesOf('wagtail')).toContain('adopted-record-gone adopted.yaml');
  writeFileSync(plug, (wagtail['jobs/2025-05-01-plug.md'] ?? '').replace('Sooty', 'Clean'));
  expect(codesOf('wagtail')).toContain('adopted-record-changed jobs/2025-05-01-plug.md');
});

test('it asks for what was left out, takes what can be read, and leaves the rest of machine.yaml as it came', async () => {
  const asker = {
    atTerminal: true,
    ask: async () => Promise.resolve('K4471'),
    interrupted: () => false,
    close: () => undefined,
  };
  const { said } = await adopt(here, packed(), { asker });
  expect(said).not.toContain('Left out');
  const text = readFileSync(join(here, 'wagtail/machine.yaml'), 'utf8');
  expect(text).toBe((wagtail['machine.yaml'] ?? '').replace('key: {stamped: "?"', 'key: {stamped: K4471'));
});

test('through a pipe it is said beforehand; a value that cannot stand there is told and left out', async () => {
  const machine = `${wagtail['machine.yaml'] ?? ''}spending limit: "?"\n`;
  const how = { 'key number': 'K-1', 'spending limit': 'much' };
  const { code, said } = await adopt(here, packed({ ...wagtail, 'machine.yaml': machine }), { options: { how } });
  expect(code).toBe(0);
  expect(said).toContain('money-unreadable');
  expect(said).toContain('written into wagtail/machine.yaml: spending limit');
  expect(readFileSync(join(here, 'wagtail/machine.yaml'), 'utf8')).toContain('K-1');
});

test('from the ZIP alone the same comes as from the folder', async () => {
  const folder = packed();
  const zip = join(around, 'alone.zip');
  await writeZip(zip, { folder, files: filesBelow(folder), name: 'wagtail-package', day: '2026-11-19' });
  await adopt(here, folder, { into: 'one' });
  rmSync(folder, { recursive: true });
  mkdirSync(join(around, 'elsewhere'));
  expect((await adopt(join(around, 'elsewhere'), zip)).code).toBe(0);
  expect(contents(join(around, 'elsewhere/wagtail'))).toEqual(contents(join(here, 'one')));
});

test('twice, over something that is there, or of a machine that stands in the workshop: refused with words', async () => {
  const folder = packed();
  await adopt(here, folder);
  const before = contents(here);
  const twice = await adopt(here, folder);
  const again = await adopt(here, folder, { into: 'other' });
  const inside = await adopt(here, folder, { into: 'wagtail' });
  const below = await adopt(here, folder, { into: 'wagtail/jobs/inner' });
  expect([twice, again, inside, below].map(({ code }) => code)).toEqual([1, 1, 1, 1]);
  expect(twice.said).toContain('There is something called wagtail already; it was not touched.');
  expect(again.said).toContain('This package was adopted already, on 2026-11-20: its machine is wagtail.');
  expect(inside.said).toContain('There is something called wagtail already');
  expect(contents(here)).toEqual(before);
  rmSync(join(here, 'wagtail'), { recursive: true });
  put('old/machine.yaml', wagtail['machine.yaml'] ?? '');
  const known = await adopt(here, folder);
  expect([known.code, known.said.split('\n')[0]]).toEqual([
    1,
    'old has the same frame number: this machine is in the workshop already. Its records are not touched.',
  ]);
});

test('interruption at any step leaves the workshop as it was, and the next run sweeps nothing of a run that lives', async () => {
  const folder = packed();
  put('other/machine.yaml', (wagtail['machine.yaml'] ?? '').replace('LW125-01234', 'LP175-04417'));
  const before = contents(here);
  const met: string[] = [];
  await adopt(join(around), folder, { into: 'seen', step: (name) => met.push(name) });
  expect(met).toEqual(['verify', 'begin', 'write', 'read', 'ask', 'mark', 'name']);
  for (const at of met) {
    const step = (name: string): void => {
      if (name === at) throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
    };
    expect([at, (await adopt(here, folder, { step })).code]).toEqual([at, 3]);
    expect(contents(here)).toEqual(before);
  }
  const dead = join(here, '.wagtail-adopting-999999999-abcdef');
  mkdirSync(dead);
  writeFileSync(join(dead, 'machine.yaml'), 'half');
  expect(findMachines(here).value).toEqual([join(here, 'other')]);
  expect((await adopt(here, folder)).code).toBe(0);
  expect(findMachines(here).value).toEqual([join(here, 'other'), join(here, 'wagtail')]);
  expect(filesBelow(here).filter((file) => file.startsWith('.'))).toEqual([]);
});

test('a package that is not as it was made is refused, each file of it named', async () => {
  const folder = packed();
  writeFileSync(join(folder, 'data/records/wagtail/story.md'), 'It was always kept dry.\n');
  const { code, said } = await adopt(here, folder);
  expect(code).toBe(1);
  expect(said).toContain('changed  data/records/wagtail/story.md');
  expect(said).toContain('Nothing was adopted, and nothing was written.');
  writeFileSync(join(folder, 'manifest-sha256.txt'), 'not a manifest\n');
  expect((await adopt(here, folder)).said).toContain('broken   manifest-sha256.txt');
  expect(filesBelow(here)).toEqual([]);
});

test('records rewritten together with every list show, because the fingerprint is made of the records', async () => {
  const honest = packed();
  const forged = writePackage(join(around, 'forged'), { ...wagtail, 'story.md': 'It was always kept dry.\n' });
  const printOf = (folder: string) =>
    /Fingerprint: (\S+)/u.exec(readFileSync(join(folder, 'bag-info.txt'), 'utf8'))?.[1];
  expect(printOf(forged)).not.toBe(printOf(honest));
  // The old fingerprint and the old list over new records: the lists agree with the files, and the fingerprint does not.
  const { writeTagFiles } = await import('../../src/command/handover/tag-files.ts');
  for (const name of ['bagit.txt', 'read-me.txt', 'bag-info.txt', 'manifest-sha256.txt', 'tagmanifest-sha256.txt'])
    rmSync(join(forged, name));
  writeFileSync(
    join(forged, 'data/records/wagtail/records.sha256'),
    readFileSync(join(honest, 'data/records/wagtail/records.sha256')),
  );
  writeTagFiles({
    folder: forged,
    payload: filesBelow(join(forged, 'data')).map((file) => `data/${file}`),
    readMe: '',
    info: [
      ['Splitpin-Machine-Folder', 'wagtail'],
      ['Splitpin-Fingerprint', printOf(honest) ?? ''],
    ],
  });
  expect((await adopt(here, forged)).said).toContain('the fingerprint in it is not that of the records');
});

test.each([
  [
    'softens a hold point',
    'hold-points/soft.md',
    '---\nhold point: before-turning\nchecks: [{id: bores-oiled, check: Oil if you like}]\n---\n',
    'content-weakened',
  ],
  [
    'softens a WARNING',
    'cautions/soft.md',
    '---\ncautions:\n  - {id: petrol, grade: NOTE, line: Petrol smells.}\n---\n',
    'content-weakened',
  ],
  ['cannot be read', 'jobs/bad.md', '---\ntitle: Bad\ndate: yesterday\n---\n', 'date-unreadable'],
  [
    'reaches out of its folder',
    'jobs/out.md',
    '---\ntitle: Out\ndate: 2025-01-01\nkind: service\nstate: done\nphotos: [{file: ../../secret.jpg, caption: x}]\n---\n',
    'path-climbs',
  ],
])('a stranger’s record that %s is refused, and named', async (_what, file, text, code) => {
  const result = await adopt(here, packed({ ...wagtail, [file]: text }));
  expect(result.code).toBe(1);
  expect(result.said).toContain(code);
  expect(result.said).toContain(file);
  expect(filesBelow(here)).toEqual([]);
});

test('links, and things that are no package, are refused and nothing outside is touched', async () => {
  const folder = packed();
  symlinkSync('/etc/hostname', join(folder, 'data/records/wagtail/jobs/link.md'));
  const linked = await adopt(here, folder);
  expect(linked.said).toContain('is a link; links are not followed');
  writeFileSync(join(around, 'text.zip'), 'no zip');
  mkdirSync(join(around, 'empty'));
  const results = [
    linked,
    await adopt(here, join(around, 'text.zip')),
    await adopt(here, join(around, 'empty')),
    await adopt(here, join(around, 'gone')),
  ];
  expect(results.map(({ code }) => code)).toEqual([1, 1, 1, 1]);
  expect(filesBelow(here)).toEqual([]);
});

test('a package without a machine, and one whose folder has a name no system keeps, are refused', async () => {
  const none = writePackage(join(around, 'none'), { 'story.md': 'x' });
  expect((await adopt(here, none)).said).toContain('There is no machine in it');
  expect((await adopt(here, packed(), { into: 'aux' })).said).toContain('cannot be called “aux”');
});

test('instruments of the former workshop come along, and mean the former owner’s in this machine', async () => {
  const one = (name: string) => `splitpin: 1\ninstruments:\n  - {id: feelers, name: ${name}}\n`;
  put('instruments.yaml', one('New feelers'));
  const reading = `${(wagtail['jobs/2025-05-01-plug.md'] ?? '').replace('hands: [hand 1]', 'hands: [hand 1]\nreadings: [{item: ring gap, found: 0.30 mm, instrument: feelers}]')}`;
  const { code, said } = await adopt(
    here,
    packed({ ...wagtail, 'jobs/2025-05-01-plug.md': reading, '../instruments.yaml': one('Old feelers') }),
  );
  expect([code, said.includes('The instrument feelers is the former owner’s here')]).toEqual([0, true]);
  const { binder, problems } = readMachine(join(here, 'wagtail'), '2026-11-20', {});
  expect(binder?.book.records.instruments.map(({ name }) => name)).toEqual(['Old feelers']);
  expect(problems.filter(({ severity }) => severity === 'problem')).toEqual([]);
});
