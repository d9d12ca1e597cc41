// The PDFs of a binder: the same with any number of threads, faults carried home, nothing made again that would come out the same.
import { mkdtempSync, readFileSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openAside, swapIn, type Aside } from '../../src/cache/aside.ts';
import { readLastBuild } from '../../src/cache/manifest.ts';
import type { Carried } from '../../src/command/carried-data.ts';
import { printAll, threadsFor, worthAnother, worthAThread } from '../../src/command/print-threads.ts';
import { writeFault } from '../../src/command/write-fault.ts';
import { printFile, writePrints } from '../../src/command/write-prints.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { longHistory } from '../pdf/long-history.ts';
import { everyBlock, sheetOf } from '../pdf/sample-sheets.ts';

let base = '';
let out = '';
beforeEach(() => {
  base = realpathSync(mkdtempSync(join(tmpdir(), 'splitpin-prints-')));
  out = join(base, 'binder');
});
afterEach(() => rmSync(base, { recursive: true, force: true }));

const sheets: readonly Sheet[] = [
  sheetOf(everyBlock, { id: 'first', foot: 'sign off' }),
  sheetOf(longHistory(6), { id: 'second', carriesData: true }),
  sheetOf(longHistory(2), { id: 'third', title: 'Another' }),
];
const words =
  (text: string): Carried =>
  (sheet) =>
    sheet.carriesData === true
      ? [{ name: 'binder.json', description: 'data', type: 'application/json', bytes: Buffer.from(text) }]
      : [];

interface Asked {
  readonly threads?: number;
  readonly carried?: string;
  readonly of?: readonly Sheet[];
}

/** Writes the sheets into the output folder, as a build does; gives the PDFs that were written anew. */
async function build({ threads = 0, carried = '{}', of = sheets }: Asked): Promise<readonly string[]> {
  const aside: Aside = openAside(out, readLastBuild(out));
  const prints = await writePrints({
    aside,
    sheets: of,
    photos: new Map(),
    program: 'p',
    carried: words(carried),
    progress: () => undefined,
    threads,
  });
  expect(prints.marks.map((mark) => mark.file)).toEqual(of.map(printFile));
  const outputs = Object.fromEntries(aside.outputs);
  const made = { splitpin: 1 as const, program: 'p', options: '', inputs: [], photos: [], said: [], outputs };
  swapIn(aside, { ...made, prints: prints.marks });
  const written = aside.written.filter((file) => file.endsWith('.pdf')).toSorted();
  // Each with the small picture of its first side.
  const pictures = written.map((file) => file.replace('.pdf', '.svg'));
  expect(aside.written.filter((file) => file.endsWith('.svg')).toSorted()).toEqual(pictures);
  return written;
}

const bytes = (): readonly string[] =>
  sheets.map((sheet) => readFileSync(join(out, printFile(sheet))).toString('base64'));

describe('threads', () => {
  it('write the same bytes as one after the other', async () => {
    await build({ threads: 0 });
    const serial = bytes();
    expect(new Set(serial).size).toBe(3);
    for (const threads of [1, 2]) {
      rmSync(out, { recursive: true });
      await build({ threads });
      expect(bytes()).toEqual(serial);
    }
  });

  it('bring a fault of the disk home as it was', async () => {
    const [sheet] = sheets;
    if (sheet === undefined) throw new Error('no sheet');
    const task = (path: string) => ({
      size: 1,
      task: { sheet, path, photos: new Map(), attach: [], preview: join(base, 'side.svg') },
    });
    const tasks = [task(join(base, 'whole.pdf')), task(base)];
    for (const threads of [0, 1, 2])
      await expect(printAll(tasks, threads, () => undefined)).rejects.toMatchObject({ code: 'EISDIR' });
    expect(writeFault(Object.assign(new Error('full'), { code: 'ENOSPC' }))).toContain('The disk is full.');
  });

  it('are begun only where they pay', () => {
    expect(threadsFor([], 8)).toBe(0);
    expect(threadsFor([worthAThread - 1], 8)).toBe(0);
    expect(threadsFor([worthAThread * 2], 1)).toBe(0);
    expect(threadsFor([worthAThread, worthAThread], 2)).toBe(1);
    // One long history beside small sheets is one thread's work, however long it is.
    expect(threadsFor([worthAnother * 9, 20_000, 20_000], 8)).toBe(1);
    expect(threadsFor([worthAnother, worthAnother, worthAnother], 8)).toBe(3);
    expect(threadsFor([worthAnother, worthAnother, worthAnother], 2)).toBe(2);
  });
});

describe('what is made again', () => {
  it('is nothing where nothing has changed', async () => {
    expect(await build({})).toHaveLength(3);
    expect(await build({})).toEqual([]);
  });
  it('is the sheet that has changed, and no other', async () => {
    await build({});
    const changed = sheets.map((sheet) => (sheet.id === 'third' ? { ...sheet, title: 'Changed' } : sheet));
    expect(await build({ of: changed })).toEqual(['print/third.pdf']);
  });
  it('is the history where the data that it carries have changed', async () => {
    await build({});
    expect(await build({ carried: '{"more": 1}' })).toEqual(['print/second.pdf']);
  });
  it('is all where both sides are printed instead of one', async () => {
    await build({});
    expect(await build({ of: sheets.map((sheet) => ({ ...sheet, sides: 'both' as const })) })).toHaveLength(3);
  });
  it('is a sheet with a character that no typeface has, so that it is said again', async () => {
    const strange = [...sheets.slice(1), sheetOf([], { id: 'strange', title: 'Brake by 日本' })];
    await build({ of: strange });
    expect(await build({ of: strange })).toEqual(['print/strange.pdf']);
  });
});
