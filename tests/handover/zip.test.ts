// A ZIP from a stranger: what could leave the folder, fill the disk or hide is named, and nothing of it is unpacked.
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { expect, test } from 'vitest';
import { ZipFile } from 'yazl';
import { readZip, zipLimits } from '../../src/command/zip/read-zip.ts';

const folder = mkdtempSync(join(tmpdir(), 'splitpin-zip-'));
let count = 0;

interface Packed {
  readonly name: string;
  readonly text?: string;
  readonly mode?: number;
}

async function zipOf(files: readonly Packed[], spoil: (bytes: Buffer) => Buffer = (bytes) => bytes): Promise<string> {
  const zip = new ZipFile();
  for (const { name, text = 'x', mode = 0o100644 } of files)
    zip.addBuffer(Buffer.from(text), name, { mode, mtime: new Date(2024, 0, 1) });
  zip.end();
  count += 1;
  const path = join(folder, `${String(count)}.zip`);
  writeFileSync(path, spoil(await buffer(zip.outputStream)));
  return path;
}

/** Names in a ZIP are not compressed: another of the same length can stand there, in both places. */
function renamed(from: string, to: string): (bytes: Buffer) => Buffer {
  return (bytes) => Buffer.from(bytes.toString('latin1').replaceAll(from, to), 'latin1');
}

async function wrongOf(path: string, limits = zipLimits): Promise<readonly string[]> {
  const zip = await readZip(path, limits);
  if ('wrong' in zip) return zip.wrong;
  zip.close();
  return [];
}

test('a good one opens, and gives its bytes', async () => {
  const zip = await readZip(
    await zipOf([
      { name: 'a/b.txt', text: 'words' },
      { name: 'a/ß 山.txt', text: 'more' },
    ]),
  );
  if ('wrong' in zip) throw new Error(zip.wrong.join('\n'));
  expect(zip.files.map(({ path, size }) => [path, size])).toEqual([
    ['a/b.txt', 5],
    ['a/ß 山.txt', 4],
  ]);
  expect(String(await zip.files[0]?.bytes())).toBe('words');
  zip.close();
});

test.each([
  ['../x.txt', 'aa/x.txt'],
  ['/etc/pw', 'aetc/pw'],
  ['C:/x.txt', 'CC/x.txt'],
  ['a\\..\\b', 'a-aa-b'],
  ['a/../../b', 'a/aa/aa/b'],
])('a path that climbs out or is absolute: %s', async (bad, good) => {
  const path = await zipOf([{ name: good }], renamed(good, bad));
  expect(await wrongOf(path)).toEqual([expect.stringMatching(/not a path below the package|climbs out/u)]);
});

test.each(['con.txt', 'a/aux', 'a/b:c', 'a/b. ', 'a/b?', 'a/\u0007b'])(
  'a name that not every system holds: %j',
  async (name) => {
    expect(await wrongOf(await zipOf([{ name }]))).toHaveLength(1);
  },
);

test('links and other things that are no files', async () => {
  expect(await wrongOf(await zipOf([{ name: 'link', text: '/etc/passwd', mode: 0o120777 }]))).toEqual([
    '“link” is a link; links are not followed.',
  ]);
  expect(await wrongOf(await zipOf([{ name: 'pipe', mode: 0o010644 }]))).toEqual([
    '“pipe” is neither a file nor a folder.',
  ]);
});

test('names that some disks take for one', async () => {
  const doubled = await zipOf([
    { name: 'a/Read.txt' },
    { name: 'a/read.TXT' },
    { name: 'a/\u00e9' },
    { name: 'a/e\u0301' },
  ]);
  expect(await wrongOf(doubled)).toHaveLength(2);
  const same = await zipOf([{ name: 'aaa' }, { name: 'bbb' }], renamed('bbb', 'aaa'));
  expect(await wrongOf(same)).toEqual(['“aaa” is in it twice, as some disks see it.']);
});

test('absurd sizes: too many files, too large, unpacking to far more than it is', async () => {
  const small = { files: 2, file: 1000, all: 1500, ratio: 50 };
  expect(await wrongOf(await zipOf([{ name: 'a' }, { name: 'b' }, { name: 'c' }]), small)).toHaveLength(1);
  expect(await wrongOf(await zipOf([{ name: 'a', text: randomText(1001) }]), small)).toEqual([
    expect.stringContaining('would be 1001 bytes'),
  ]);
  const two = [randomText(900), randomText(901)].map((text, index) => ({ name: String(index), text }));
  expect(await wrongOf(await zipOf(two), small)).toEqual(['Unpacked it would be 1801 bytes: too many.']);
  expect(await wrongOf(await zipOf([{ name: 'a', text: '0'.repeat(990) }]), small)).toEqual([
    expect.stringContaining('would unpack to 990 bytes'),
  ]);
});

function randomText(length: number): string {
  let [state, text] = [7, ''];
  while (text.length < length) {
    state = (state * 16807) % 2147483647;
    text += String.fromCharCode(33 + (state % 90));
  }
  return text;
}

test('what is cut, is no ZIP, or holds other bytes than it says', async () => {
  const cut = await zipOf([{ name: 'a', text: 'words' }], (bytes) => bytes.subarray(0, bytes.length - 30));
  expect(await wrongOf(cut)).toHaveLength(1);
  const other = await zipOf([{ name: 'a' }], () => Buffer.from('no ZIP at all'));
  expect(await wrongOf(other)).toEqual(['This is no ZIP, or its end is missing.']);
  const changed = await zipOf([{ name: 'a', text: randomText(400) }], (bytes) => {
    bytes[80] = (bytes[80] ?? 0) ^ 1;
    return bytes;
  });
  const zip = await readZip(changed);
  if ('wrong' in zip) throw new Error(zip.wrong.join('\n'));
  await expect(zip.files[0]?.bytes()).rejects.toThrow();
  zip.close();
});
