// The output folder: built aside, swapped in whole, never taken from anybody else, and swept after runs that were killed.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  renameSync,
  realpathSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import {
  borrow,
  dropAside,
  noteFile,
  openAside,
  pathFor,
  putText,
  swapIn,
  takeOver,
  type Aside,
} from '../../src/cache/aside.ts';
import { claimOutput, refuseLooseFiles } from '../../src/cache/claim.ts';
import { hashOf } from '../../src/cache/hash.ts';
import { manifestFile, readLastBuild, writeManifest, type Manifest } from '../../src/cache/manifest.ts';
import { sweep } from '../../src/cache/sweep.ts';
import { isUnchanged } from '../../src/cache/unchanged.ts';

let base = '';
let out = '';
let machine = '';
beforeEach(() => {
  base = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-out-')));
  out = join(base, 'binder');
  machine = join(base, 'bike');
  mkdirSync(machine);
});
afterEach(() => rmSync(base, { recursive: true, force: true }));

function manifestOf(aside: Aside, more: Partial<Manifest> = {}): Manifest {
  const outputs = Object.fromEntries(aside.outputs);
  return { splitpin: 1, program: 'p', options: 'o', inputs: [], photos: [], prints: [], outputs, said: [], ...more };
}

function buildOnce(texts: Readonly<Record<string, string>>): readonly string[] {
  const aside = openAside(out, readLastBuild(out));
  for (const [file, text] of Object.entries(texts)) putText(aside, file, text);
  swapIn(aside, manifestOf(aside));
  return aside.written;
}

/** Waits until the clock of the disk has moved on, so that a later write is younger. */
function tick(): void {
  const mark = join(base, 'clock');
  writeFileSync(mark, '');
  const before = statSync(mark).mtimeMs;
  while (statSync(mark).mtimeMs === before) writeFileSync(mark, 'x');
}

test('a build replaces the folder whole, writes only what differs, and drops what is gone', () => {
  expect(buildOnce({ 'index.html': 'one', 'jobs/a.html': 'a', 'jobs/b.html': 'b' })).toHaveLength(3);
  const kept = statSync(join(out, 'jobs/a.html'));
  expect(buildOnce({ 'index.html': 'two', 'jobs/a.html': 'a' })).toEqual(['index.html']);
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('two');
  expect(existsSync(join(out, 'jobs/b.html'))).toBe(false);
  expect(statSync(join(out, 'jobs/a.html')).ino).toBe(kept.ino);
  expect(statSync(out).mode & 0o777).toBe(0o755);
  expect(readdirSync(base).sort()).toEqual(['bike', 'binder']);
});

test('a folder of pages that all came out as before goes over whole; with anything else in it, page by page', () => {
  const pages = { 'index.html': 'one', 'jobs/a.html': 'a', 'jobs/b.html': 'b', 'parts/far/c.html': 'c' };
  buildOnce(pages);
  const [jobs, far] = [statSync(join(out, 'jobs')).ino, statSync(join(out, 'parts/far')).ino];
  expect(buildOnce({ ...pages, 'index.html': 'two' })).toEqual(['index.html']);
  expect([statSync(join(out, 'jobs')).ino, statSync(join(out, 'parts/far')).ino]).toEqual([jobs, far]);
  expect(readFileSync(join(out, 'parts/far/c.html'), 'utf8')).toBe('c');
  writeFileSync(join(out, 'jobs/theirs.html'), 'put there');
  expect(buildOnce({ ...pages, 'parts/far/deeper/d.html': 'd' })).toEqual(['index.html', 'parts/far/deeper/d.html']);
  expect(readdirSync(join(out, 'jobs')).sort()).toEqual(['a.html', 'b.html']);
  expect(readdirSync(join(out, 'parts/far')).sort()).toEqual(['c.html', 'deeper']);
  expect(readFileSync(join(out, 'parts/far/c.html'), 'utf8')).toBe('c');
  expect(buildOnce({ ...pages, 'jobs/new.html': 'n' })).toEqual(['jobs/new.html']);
  expect(readdirSync(join(out, 'jobs')).sort()).toEqual(['a.html', 'b.html', 'new.html']);
  expect(existsSync(join(out, 'parts/far/deeper'))).toBe(false);
  expect(readdirSync(base).sort()).toEqual(['bike', 'binder']);
});

test('a page put twice is there as it was put last', () => {
  buildOnce({ 'jobs/a.html': 'old', 'jobs/b.html': 'b' });
  const aside = openAside(out, readLastBuild(out));
  putText(aside, 'jobs/a.html', 'old');
  putText(aside, 'jobs/a.html', 'new');
  putText(aside, 'jobs/b.html', 'other');
  putText(aside, 'jobs/b.html', 'b');
  swapIn(aside, manifestOf(aside));
  expect(readFileSync(join(out, 'jobs/a.html'), 'utf8')).toBe('new');
  expect(readFileSync(join(out, 'jobs/b.html'), 'utf8')).toBe('b');
});

test('until the swap, and when a build is given up, the old folder is as it was', () => {
  buildOnce({ 'index.html': 'old' });
  const aside = openAside(out, readLastBuild(out));
  putText(aside, 'index.html', 'new');
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('old');
  dropAside(aside);
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('old');
  expect(readdirSync(base).sort()).toEqual(['bike', 'binder']);
});

test('a file that somebody wrote to since is not taken over', () => {
  buildOnce({ 'index.html': 'same', 'other.html': 'same' });
  tick();
  writeFileSync(join(out, 'index.html'), 'edit');
  expect(buildOnce({ 'index.html': 'same', 'other.html': 'same' })).toEqual(['index.html']);
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('same');
});

test('a file written in pieces is noted and taken over the next time', () => {
  const first = openAside(out, undefined);
  writeFileSync(pathFor(first, 'print/a.pdf'), 'pdf');
  noteFile(first, 'print/a.pdf');
  swapIn(first, manifestOf(first));
  const second = openAside(out, readLastBuild(out));
  expect(takeOver(second, 'print/a.pdf')).toBe(true);
  expect(takeOver(second, 'print/none.pdf')).toBe(false);
  swapIn(second, manifestOf(second));
  expect(readFileSync(join(out, 'print/a.pdf'), 'utf8')).toBe('pdf');
});

test('only a folder that is ours, empty or not there yet is claimed', () => {
  const code = (path: string): string => claimOutput(path, machine).problems[0]?.code ?? 'fine';
  expect(code(out)).toBe('fine');
  mkdirSync(out);
  expect(code(out)).toBe('fine');
  writeFileSync(join(out, 'thesis.txt'), 'years of work');
  expect(code(out)).toBe('output-not-ours');
  rmSync(out, { recursive: true });
  buildOnce({ 'index.html': 'ours' });
  expect(code(out)).toBe('fine');
  writeFileSync(join(base, 'file'), '');
  expect(code(join(base, 'file'))).toBe('output-not-ours');
  expect(code(join(base, 'file', 'below'))).toBe('output-not-writable');
  expect(code('/proc/splitpin/out')).toBe('output-not-writable');
  expect(code(join(machine, 'out'))).toBe('output-in-machine-folder');
  expect(code(machine)).toBe('output-in-machine-folder');
  expect(code(base)).toBe('output-not-ours');
  writeFileSync(join(base, manifestFile), '{}');
  expect(code(base)).toBe('output-not-ours');
});

test('a way into the machine folder through a link is seen, also where the last part is still to be made', () => {
  symlinkSync(machine, join(base, 'other name'));
  for (const way of ['other name', 'other name/out', 'other name/a/b/out']) {
    expect(claimOutput(join(base, way), machine).problems.map(({ code }) => code)).toEqual([
      'output-in-machine-folder',
    ]);
    expect(refuseLooseFiles(join(base, way), machine)?.code).toBe('output-in-machine-folder');
  }
  expect(readdirSync(machine)).toEqual([]);
});

test('the root of the disk, and a way through a file or a dead link, are never claimed', () => {
  symlinkSync(join(base, 'nowhere'), join(base, 'dead'));
  writeFileSync(join(base, 'file'), 'mine');
  expect(claimOutput('/', machine).problems[0]?.code).toBe('output-not-ours');
  expect(claimOutput(join(base, 'file/out'), machine).problems[0]?.code).toBe('output-not-writable');
  expect(claimOutput(join(base, 'dead/out'), machine).problems[0]?.code).toBe('output-not-writable');
  expect(readFileSync(join(base, 'file'), 'utf8')).toBe('mine');
});

const dead = 2 ** 22 + 1;

test('what a killed run left is swept; a living run and a stranger’s folder are not', () => {
  const leave = (name: string, mark: boolean): void => {
    mkdirSync(join(base, name));
    writeFileSync(join(base, name, mark ? manifestFile : 'theirs.txt'), '{}');
  };
  leave(`.binder-${String(dead)}-abcdef`, true);
  leave(`.binder-${String(dead)}-ghijkl`, false);
  leave(`.binder-${String(process.ppid)}-abcdef`, true);
  leave('.binder-notes', true);
  leave(`.other-${String(dead)}-abcdef`, true);
  sweep(out);
  expect(readdirSync(base).sort()).toEqual(
    [
      `.binder-${String(dead)}-ghijkl`,
      `.binder-${String(process.ppid)}-abcdef`,
      '.binder-notes',
      `.other-${String(dead)}-abcdef`,
      'bike',
    ].sort(),
  );
});

test('a folder aside whose run was killed before it could mark it is swept too', () => {
  mkdirSync(join(base, `.binder-${String(dead)}-abcdef`));
  sweep(out);
  expect(readdirSync(base)).toEqual(['bike']);
});

test('an output folder caught between the two renames of a swap comes back', () => {
  const caught = join(base, `.binder-${String(dead)}-abcdef-old`);
  mkdirSync(caught);
  writeFileSync(join(caught, 'index.html'), 'old');
  writeManifest(caught, {
    splitpin: 1,
    program: '',
    options: '',
    inputs: [],
    photos: [],
    prints: [],
    outputs: {},
    said: [],
  });
  sweep(out);
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('old');
  expect(readdirSync(base).sort()).toEqual(['bike', 'binder']);
});

test('folders that had gone over when a swap was cut short are given back', () => {
  buildOnce({ 'index.html': 'one', 'jobs/a.html': 'a', 'parts/far/c.html': 'c' });
  const aside = join(base, `.binder-${String(dead)}-abcdef`);
  mkdirSync(join(aside, 'parts'), { recursive: true });
  writeFileSync(join(aside, manifestFile), '{"unfinished":true}');
  writeFileSync(join(aside, 'index.html'), 'two');
  mkdirSync(join(aside, 'tables'));
  renameSync(out, `${aside}-old`);
  renameSync(join(`${aside}-old`, 'jobs'), join(aside, 'jobs'));
  renameSync(join(`${aside}-old`, 'parts/far'), join(aside, 'parts/far'));
  sweep(out);
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('one');
  expect(readFileSync(join(out, 'jobs/a.html'), 'utf8')).toBe('a');
  expect(readFileSync(join(out, 'parts/far/c.html'), 'utf8')).toBe('c');
  expect(existsSync(join(out, 'tables'))).toBe(false);
  expect(readdirSync(base).sort()).toEqual(['bike', 'binder']);
});

test('a swap that fails half way leaves the old folder as it was', () => {
  buildOnce({ 'index.html': 'one', 'jobs/a.html': 'a', 'parts/b.html': 'b' });
  const aside = openAside(out, readLastBuild(out));
  for (const [file, text] of [
    ['index.html', 'two'],
    ['jobs/a.html', 'a'],
    ['parts/b.html', 'b'],
  ] as const)
    putText(aside, file, text);
  // Where the second folder is to go, somebody has put a file.
  const manifest = manifestOf(aside, {});
  const meddling: Manifest = {
    ...manifest,
    get said() {
      writeFileSync(join(aside.folder, 'parts'), 'in the way');
      return [];
    },
  };
  expect(() => swapIn(aside, meddling)).toThrow();
  dropAside(aside);
  expect(readFileSync(join(out, 'index.html'), 'utf8')).toBe('one');
  expect(readFileSync(join(out, 'jobs/a.html'), 'utf8')).toBe('a');
  expect(readFileSync(join(out, 'parts/b.html'), 'utf8')).toBe('b');
  expect(readdirSync(base).sort()).toEqual(['bike', 'binder']);
});

test('nothing has changed only when program, choices, inputs and outputs are all the same', () => {
  writeFileSync(join(machine, 'a.md'), 'text');
  const { size, mtimeMs } = statSync(join(machine, 'a.md'));
  const stamp = { file: 'a.md', size, modified: mtimeMs };
  const aside = openAside(out, undefined);
  putText(aside, 'index.html', 'page');
  swapIn(aside, manifestOf(aside, { inputs: [{ ...stamp, hash: hashOf('text') }] }));
  const last = readLastBuild(out);
  if (last === undefined) throw new Error('no manifest');
  const now = { program: 'p', options: 'o', folder: machine, stamps: [stamp] };
  expect(isUnchanged(last, now)).toBe(true);
  expect(isUnchanged(last, { ...now, program: 'q' })).toBe(false);
  expect(isUnchanged(last, { ...now, options: 'q' })).toBe(false);
  expect(isUnchanged(last, { ...now, stamps: [] })).toBe(false);
  expect(isUnchanged(last, { ...now, stamps: [stamp, { ...stamp, file: 'b.md' }] })).toBe(false);
  expect(isUnchanged(last, { ...now, stamps: [{ ...stamp, size: 9 }] })).toBe(false);
  expect(isUnchanged(last, { ...now, stamps: [{ ...stamp, modified: 1 }] })).toBe(true);
  writeFileSync(join(machine, 'a.md'), 'tekst');
  expect(isUnchanged(last, { ...now, stamps: [{ ...stamp, modified: 1 }] })).toBe(false);
  rmSync(join(machine, 'a.md'));
  expect(isUnchanged(last, { ...now, stamps: [{ ...stamp, modified: 1 }] })).toBe(false);
  rmSync(join(out, 'index.html'));
  expect(isUnchanged(last, now)).toBe(false);
});

test('a manifest that is not whole marks the folder as ours and gives nothing', () => {
  mkdirSync(out);
  writeFileSync(join(out, manifestFile), '{"splitpin":1,"outputs"');
  writeFileSync(join(out, 'index.html'), '');
  expect(readLastBuild(out)).toBeUndefined();
  expect(claimOutput(out, machine).problems).toEqual([]);
});

test('lends a file of the last build to a folder of scratch, unless somebody has written to it', () => {
  buildOnce({ 'photos/a.jpg': 'a', 'photos/b.jpg': 'b' });
  const scratch = join(base, 'scratch');
  expect(borrow(undefined, 'photos/a.jpg', scratch)).toBe(false);
  expect(borrow(readLastBuild(out), 'photos/a.jpg', scratch)).toBe(true);
  expect(readFileSync(join(scratch, 'photos/a.jpg'), 'utf8')).toBe('a');
  tick();
  writeFileSync(join(out, 'photos/b.jpg'), 'other');
  expect(borrow(readLastBuild(out), 'photos/b.jpg', scratch)).toBe(false);
  expect(borrow(readLastBuild(out), 'photos/none.jpg', scratch)).toBe(false);
});
