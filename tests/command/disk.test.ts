// Reading folders: names of every kind, links, large files, things that are not machines.
import { execFileSync } from 'node:child_process';
import {
  mkdirSync,
  mkdtempSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { findMachines, readContentFolder, readMachineFolder, readWorkshop, stampsOf } from '../../src/disk.ts';

let folder = '';
beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin disk “ü” ')));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function put(file: string, text: string | Uint8Array = 'x: 1\n'): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
}

function codes(
  problems: readonly { readonly code: string; readonly at: { readonly file: string } }[],
): readonly string[] {
  return problems.map((problem) => problem.code + ' ' + problem.at.file);
}

test('takes records, photos and papers under any name, in one order, and nothing else', () => {
  const names = [
    "jobs/it's «done».md",
    'jobs/Größe 日本.md',
    'jobs/deep/er/2.md',
    'jobs/1.md',
    'maker/book one.yaml',
    'story.md',
  ];
  for (const name of ['machine.yaml', 'instruments.yaml', ...names]) put(name);
  put('photos/a b.jpg');
  put('documents/bill.pdf');
  put('notes/private.md');
  put('jobs/.hidden.md');
  put('README.md');
  put('out/index.html');
  const { value, problems } = readMachineFolder(folder);
  expect(problems).toEqual([]);
  expect(value?.files.map((file) => file.file)).toEqual(
    [
      'instruments.yaml',
      ...names.filter((name) => name.startsWith('jobs')),
      'machine.yaml',
      'maker/book one.yaml',
      'story.md',
    ].sort(),
  );
  expect(value?.assets.map((asset) => asset.file)).toEqual(['documents/bill.pdf', 'photos/a b.jpg']);
  expect(value?.assets[1]?.size).toBe(5);
});

test('gives one name to letters that can be written in two ways', () => {
  put('machine.yaml');
  put('jobs/Gro\u0308ße.md');
  expect(readMachineFolder(folder).value?.files[0]?.file).toBe('jobs/Größe.md');
});

test('follows no link: a linked record or folder is a problem, a linked photo is marked', () => {
  put('machine.yaml');
  put('jobs/1.md');
  put('photos/1.jpg');
  symlinkSync('/etc/hostname', join(folder, 'jobs/2.md'));
  symlinkSync('/etc', join(folder, 'jobs/folder'));
  symlinkSync('/etc/hostname', join(folder, 'photos/2.jpg'));
  symlinkSync('/etc', join(folder, 'of no interest'));
  const { value, problems } = readMachineFolder(folder);
  expect(codes(problems)).toEqual(['link-not-followed jobs/2.md', 'link-not-followed jobs/folder']);
  expect(value?.files.map((file) => file.file)).toEqual(['jobs/1.md', 'machine.yaml']);
  expect(value?.assets.map((asset) => [asset.file, asset.link])).toEqual([
    ['photos/1.jpg', false],
    ['photos/2.jpg', true],
  ]);
});

test('never reads more of a huge file than shows that it is one', () => {
  put('machine.yaml');
  put('jobs/huge.md', 'a'.repeat(20_000_000));
  const text = readMachineFolder(folder).value?.files[0]?.text ?? '';
  expect(text.length).toBeGreaterThan(1_000_000);
  expect(text.length).toBeLessThan(4_000_000);
});

test('a pipe in the place of a record, and a folder too deep to be looked into, are told', () => {
  put('machine.yaml');
  execFileSync('mkfifo', [join(folder, 'machine.fifo')]);
  mkdirSync(join(folder, 'jobs'));
  renameSync(join(folder, 'machine.fifo'), join(folder, 'jobs/pipe.md'));
  const deep = `jobs/${'d/'.repeat(9)}lost.md`;
  put(deep);
  const { value, problems } = readMachineFolder(folder);
  expect(value?.files.map((file) => file.file)).toEqual(['machine.yaml']);
  expect(codes(problems)).toEqual([`file-not-opened jobs/${'d/'.repeat(7)}d`, 'file-not-opened jobs/pipe.md']);
});

test('links that lead round in a ring end, and name themselves', () => {
  put('machine.yaml');
  put('jobs/1.md');
  symlinkSync('..', join(folder, 'jobs/up'));
  symlinkSync('round', join(folder, 'jobs/round'));
  symlinkSync('.', join(folder, 'photos'));
  const { value, problems } = readMachineFolder(folder);
  expect(value?.files.map((file) => file.file)).toEqual(['jobs/1.md', 'machine.yaml']);
  expect(codes(problems)).toEqual([
    'link-not-followed jobs/round',
    'link-not-followed jobs/up',
    'link-not-followed photos',
  ]);
});

test('asks about a record under a name that is not read', () => {
  put('machine.yaml');
  put('jobs/1.txt');
  put('maker/book.md');
  const { problems } = readMachineFolder(folder);
  expect(codes(problems)).toEqual(['file-not-read jobs/1.txt', 'file-not-read maker/book.md']);
  expect(problems.every((problem) => problem.severity === 'query')).toBe(true);
});

test('refuses what is not a machine: an empty folder, a file, a path that leads nowhere', () => {
  put('file');
  for (const path of [folder, join(folder, 'file'), join(folder, 'file/below'), join(folder, 'nowhere')]) {
    expect(readMachineFolder(path).value).toBeUndefined();
    expect(codes(findMachines(path).problems)).toEqual(['not-a-machine-folder ' + path]);
  }
});

test('reads a workshop: its machines by name, its instruments shared by all', () => {
  put('instruments.yaml', 'shared: 1\n');
  put('b/machine.yaml');
  put('a/machine.yaml');
  put('tools/list.yaml');
  const { value, problems } = readWorkshop(folder);
  expect(problems).toEqual([]);
  expect(value.map((machine) => machine.name)).toEqual(['a', 'b']);
  expect(value.map((machine) => machine.shared)).toEqual([
    [{ file: '../instruments.yaml', text: 'shared: 1\n' }],
    [{ file: '../instruments.yaml', text: 'shared: 1\n' }],
  ]);
});

test('takes what has not changed from an earlier reading, the very same object', () => {
  put('machine.yaml');
  put('jobs/1.md', 'one');
  put('jobs/2.md', 'two');
  const first = readMachineFolder(folder).value;
  put('jobs/2.md', 'TWO');
  utimesSync(join(folder, 'jobs/2.md'), 77, 77);
  const second = readMachineFolder(folder, first).value;
  expect(second?.files[0]).toBe(first?.files[0]);
  expect(second?.files[1]).not.toBe(first?.files[1]);
  expect(second?.files[1]?.text).toBe('TWO');
  expect(second?.stamps).toEqual(stampsOf(folder));
});

test('names content files from the package', () => {
  const files = readContentFolder().map((file) => file.file);
  expect(files).toContain('content/pages/formats.md');
  expect(files).toEqual([...files].sort());
});
