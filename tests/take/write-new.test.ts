// New files are written all or none, never over one that is there; whatever breaks off, nothing half is left.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { spawn } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { writeNew } from '../../src/command/take/write-new.ts';

const folder = (): string => mkdtempSync(join(tmpdir(), 'splitpin-new-'));
const all = (at: string): readonly string[] => readdirSync(at, { recursive: true }).map(String).toSorted();

describe('new files', () => {
  test('come whole, in folders that are made', () => {
    const at = folder();
    writeNew(at, [
      { file: 'jobs/a.md', bytes: 'a' },
      { file: 'photos/x/b.jpg', bytes: () => Buffer.from('b') },
    ]);
    expect(all(at)).toEqual(['jobs', 'jobs/a.md', 'photos', 'photos/x', 'photos/x/b.jpg']);
    expect(readFileSync(join(at, 'photos/x/b.jpg'), 'utf8')).toBe('b');
  });

  test('never take the place of a file that is there, and then none of them comes', () => {
    const at = folder();
    mkdirSync(join(at, 'jobs'));
    writeFileSync(join(at, 'jobs/b.md'), 'mine');
    const files = ['a', 'b', 'c'].map((name) => ({ file: `jobs/${name}.md`, bytes: 'new' }));
    expect(() => writeNew(at, files)).toThrow('EEXIST');
    expect(all(join(at, 'jobs'))).toEqual(['b.md']);
    expect(readFileSync(join(at, 'jobs/b.md'), 'utf8')).toBe('mine');
  });

  test.each([0, 1, 2, 3])('when writing breaks off at file %i nothing is left', (broken) => {
    const at = folder();
    const files = [0, 1, 2, 3].map((index) => ({
      file: `jobs/${String(index)}.md`,
      bytes: () => {
        if (index === broken) throw new Error('the disk is full');
        return Buffer.from('new');
      },
    }));
    expect(() => writeNew(at, files)).toThrow('the disk is full');
    expect(all(join(at, 'jobs'))).toEqual([]);
  });

  test('a process killed in the middle leaves whole files only', async () => {
    const source = new URL('../../src/command/take/write-new.ts', import.meta.url);
    const loader = fileURLToPath(new URL('../../node_modules/tsx/dist/loader.mjs', import.meta.url));
    for (const at of [1, 2, 4]) {
      const place = folder();
      // The process ends itself, hard, while it is asked for the bytes of one file.
      const script = `import { writeNew } from ${JSON.stringify(source.href)};
        writeNew(${JSON.stringify(place)}, [0, 1, 2, 3, 4].map((index) => ({ file: 'jobs/' + index + '.md', bytes: () => {
          if (index === ${String(at)}) process.kill(process.pid, 'SIGKILL');
          return Buffer.from('whole'); } })));`;
      const child = spawn(process.execPath, [
        '--import',
        pathToFileURL(loader).href,
        '--input-type=module',
        '-e',
        script,
      ]);
      await new Promise((done) => child.on('close', done));
      expect(existsSync(join(place, 'jobs'))).toBe(true);
      for (const name of readdirSync(join(place, 'jobs'))) {
        const isHalf = name.startsWith('.') && name.endsWith('.half');
        expect([name, isHalf || readFileSync(join(place, 'jobs', name), 'utf8') === 'whole']).toEqual([name, true]);
      }
    }
  });
});
