// A record is written whole or not at all, whatever breaks off, and never over another's words.
import { mkdtempSync, readFileSync, readdirSync, statSync, chmodSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { realDisk, sweepHalves, writeWhole, type WritingDisk } from '../../src/command/write-whole.ts';

const before = '---\ntitle: Old\n---\n';
const after = `---\ntitle: New\nreadings: [{item: bore, found: 50.06 mm}]\n---\n${'words '.repeat(300)}\n`;

function fresh(text: string | undefined = before): string {
  const path = join(mkdtempSync(join(tmpdir(), 'splitpin-whole-')), 'a.md');
  if (text !== undefined) writeFileSync(path, text);
  return path;
}

class Dead extends Error {}

/** A disk that stops for good at one moment: nothing after it happens, no tidying up either. `half` lets half of a write through. */
function dyingAt(moment: number, half: boolean): { readonly disk: WritingDisk; readonly asked: () => number } {
  let count = 0;
  const turn = (): boolean => {
    count += 1;
    if (count > moment) throw new Dead();
    return count === moment;
  };
  const disk: WritingDisk = {
    read: (path) => (turn() ? die() : realDisk.read(path)),
    create: (path, mode) => (turn() ? die() : realDisk.create(path, mode)),
    write: (file, text) => {
      if (!turn()) return realDisk.write(file, text);
      if (half) realDisk.write(file, text.slice(0, text.length / 2));
      return die();
    },
    settle: (file) => (turn() ? die() : realDisk.settle(file)),
    close: (file) => (turn() ? die() : realDisk.close(file)),
    replace: (from, to) => (turn() ? die() : realDisk.replace(from, to)),
    name: (from, to) => (turn() ? die() : realDisk.name(from, to)),
    remove: (path) => (turn() ? die() : realDisk.remove(path)),
  };
  return { disk, asked: () => count };
}

function die(): never {
  throw new Dead();
}

function died(run: () => unknown): boolean {
  try {
    run();
    return false;
  } catch (cause) {
    if (cause instanceof Dead) return true;
    throw cause;
  }
}

test.each([true, false])('killed at any moment it holds the old text or the new (half a write through: %s)', (half) => {
  let moment = 1;
  let deaths = 0;
  const seen = new Set<string>();
  for (; moment < 30; moment += 1) {
    const path = fresh();
    const { disk } = dyingAt(moment, half);
    if (!died(() => writeWhole(path, after, before, disk))) break;
    deaths += 1;
    const now = readFileSync(path, 'utf8');
    seen.add(now === before ? 'old' : now === after ? 'new' : 'half');
    // Whatever was left behind does not stand in the way of the next run.
    expect(writeWhole(path, `${after}more\n`, now)).toBe('written');
    expect(readFileSync(path, 'utf8')).toBe(`${after}more\n`);
  }
  expect(deaths).toBeGreaterThanOrEqual(8);
  expect([...seen].toSorted()).toEqual(['new', 'old']);
});

test.each([true, false])('a new record is there whole or not at all (half a write through: %s)', (half) => {
  let deaths = 0;
  for (let moment = 1; moment < 30; moment += 1) {
    const path = join(mkdtempSync(join(tmpdir(), 'splitpin-whole-')), 'a.md');
    const { disk } = dyingAt(moment, half);
    if (!died(() => writeWhole(path, after, undefined, disk))) break;
    deaths += 1;
    expect([undefined, after]).toContain(realDisk.read(path));
  }
  expect(deaths).toBeGreaterThanOrEqual(8);
});

test('a full disk leaves the old text and nothing beside it', () => {
  const path = fresh();
  const full: WritingDisk = {
    ...realDisk,
    write: () => {
      throw Object.assign(new Error('no space left on device'), { code: 'ENOSPC' });
    },
  };
  expect(() => writeWhole(path, after, before, full)).toThrow('no space');
  expect(readFileSync(path, 'utf8')).toBe(before);
  expect(readdirSync(join(path, '..'))).toEqual(['a.md']);
});

test('what another wrote meanwhile is not written over, at the beginning or at the last moment', () => {
  const path = fresh('theirs');
  expect(writeWhole(path, after, before)).toBe('changed');
  expect(readFileSync(path, 'utf8')).toBe('theirs');
  const late = fresh();
  const meddling: WritingDisk = {
    ...realDisk,
    settle: (file) => {
      realDisk.settle(file);
      writeFileSync(late, 'theirs');
    },
  };
  expect(writeWhole(late, after, before, meddling)).toBe('changed');
  expect(readFileSync(late, 'utf8')).toBe('theirs');
  expect(readdirSync(join(late, '..'))).toEqual(['a.md']);
});

test('a record that is to be new never takes the place of one', () => {
  const path = fresh();
  expect(writeWhole(path, after, undefined)).toBe('changed');
  const late = join(mkdtempSync(join(tmpdir(), 'splitpin-whole-')), 'a.md');
  const meddling: WritingDisk = {
    ...realDisk,
    name: (from, to) => {
      writeFileSync(to, 'theirs');
      realDisk.name(from, to);
    },
  };
  expect(writeWhole(late, after, undefined, meddling)).toBe('changed');
  expect(readFileSync(late, 'utf8')).toBe('theirs');
});

test('who may read it stays as it was', () => {
  const path = fresh();
  chmodSync(path, 0o640);
  expect(writeWhole(path, after, before)).toBe('written');
  expect(statSync(path).mode & 0o777).toBe(0o640);
});

test('what a killed run left is swept, what a running one is writing is not', () => {
  const path = fresh();
  const folder = join(path, '..');
  writeFileSync(join(folder, '.a.md.999999999.half'), 'x');
  writeFileSync(join(folder, `.a.md.${String(process.ppid)}.half`), 'x');
  sweepHalves(folder);
  expect(readdirSync(folder).toSorted()).toEqual([`.a.md.${String(process.ppid)}.half`, 'a.md']);
});
