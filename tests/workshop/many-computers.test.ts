// A folder that several computers write to: conflict copies, torn merges, names that only one system keeps. A real folder is read.
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { build, readContent, readDay } from '../../src/build.ts';
import { readContentFolder, readMachineFolder } from '../../src/disk.ts';
import { machineFile } from '../evenings/evening.ts';

const content = readContent(readContentFolder());
let folder = '';
beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-many-')));
  put('machine.yaml', machineFile());
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function put(file: string, text: string): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), text);
}
function record(body = ''): string {
  return `---\ntitle: Plug looked at\ndate: 2026-05-01\nkind: service\nstate: done\n---\n${body}`;
}
function found(): { readonly said: readonly string[]; readonly jobs: readonly string[] } {
  const read = readMachineFolder(folder);
  const today = readDay('2026-06-01');
  if (read.value === undefined || !today.ok) throw new Error('no machine');
  const { files, assets, shared } = read.value;
  const made = build({ files, assets, shared, content, before: read.problems, today: today.value });
  return {
    said: made.problems.map(
      ({ code, at }) => `${code} ${at.file}${at.line === undefined ? '' : `:${String(at.line)}`}`,
    ),
    jobs: made.value?.book.records.jobs.map((job) => job.id) ?? [],
  };
}

test('a conflict copy is named and not read as a record of its own, wherever it lies', () => {
  put('jobs/plug.md', record());
  put('jobs/plug (conflicted copy 2026-05-02).md', record());
  put('jobs/plug (1).md', record());
  put('machine.sync-conflict-20260501-101500-AAAAAAA.yaml', machineFile());
  put('maker/book.yaml.orig', 'splitpin: 1\n');
  expect(found()).toEqual({
    said: [
      'conflict-copy jobs/plug (1).md',
      'conflict-copy jobs/plug (conflicted copy 2026-05-02).md',
      'conflict-copy machine.sync-conflict-20260501-101500-AAAAAAA.yaml',
      'file-not-read maker/book.yaml.orig',
    ],
    jobs: ['plug'],
  });
});

test.each([
  ['jobs/plug.md', record('Ours.\n<<<<<<< one\nClean.\n=======\nSooty.\n>>>>>>> other\n'), 8],
  [
    'jobs/plug.md',
    record().replace('kind: service', '<<<<<<< one\nkind: service\n=======\nkind: strip\n>>>>>>> other'),
    4,
  ],
  ['story.md', '\uFEFF# Story\r\n<<<<<<< one\r\na\r\n=======\r\nb\r\n>>>>>>> other\r\n', 2],
])('a merge that nobody finished is named with its line: %s', (file, text, line) => {
  put(file, text);
  expect(found()).toEqual({ said: [`conflict-marker ${file}:${String(line)}`], jobs: [] });
});

test('what only looks like the marks of a merge is somebody’s text', () => {
  put('jobs/plug.md', record('Heading\n=======\n\n<<<<<<< it leaks here\n'));
  expect(found()).toEqual({ said: [], jobs: ['plug'] });
});

test('two photos whose names differ in the spelling of an accent, or in letter case, are a problem', () => {
  for (const name of ['gro\u0308ße.jpg', 'größe.jpg', 'Plug.jpg', 'plug.jpg', 'other.jpg']) put(`photos/${name}`, 'x');
  expect(found().said).toEqual(['names-fall-together photos/größe.jpg', 'names-fall-together photos/plug.jpg']);
});

test('two jobs in one name are told once, as one id for two records', () => {
  put('jobs/plug.md', record());
  put('jobs/Plug.md', record());
  expect(found().said).toEqual(['id-twice jobs/plug.md']);
});

test('a name that another system cannot keep is asked about, and the record is read', () => {
  put('jobs/plug?.md', record());
  put('photos/aux.jpg', 'x');
  expect(found()).toEqual({
    said: ['name-not-everywhere jobs/plug?.md', 'name-not-everywhere photos/aux.jpg'],
    jobs: ['plug?'],
  });
});
