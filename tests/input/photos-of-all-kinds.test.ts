// Photos as they come out of cameras, scanners and drawing programs, and those that a stranger has prepared.
import { existsSync, mkdtempSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makePhotos } from '../../src/photos/photo-work.ts';
import { pictureHead } from '../../src/photos/picture-head.ts';
import type { Problem } from '../../src/problem/problem.ts';
import { bombPng } from '../photos/bomb-png.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'splitpin-kinds-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function made(name: string, bytes: Uint8Array): Promise<readonly Problem[]> {
  const absolute = join(folder, name);
  writeFileSync(absolute, bytes);
  const { size, mtimeMs } = statSync(absolute);
  const { value, problems } = await makePhotos({
    assets: [{ file: `photos/${name}`, absolute, size, modified: mtimeMs }],
    into: join(folder, 'out'),
    known: new Map(),
    takeOver: () => false,
    progress: () => undefined,
  });
  for (const photo of value) {
    const { format, space, pages, depth } = await sharp(join(folder, 'out', photo.large)).metadata();
    expect([name, format, space, pages, depth]).toEqual([name, 'jpeg', 'srgb', undefined, 'uchar']);
  }
  expect(value.length + problems.length).toBe(1);
  return problems;
}

const plain = sharp({ create: { width: 60, height: 40, channels: 3, background: '#884422' } });

/** A small PNG whose head says that it is a huge one. */
function claiming(width: number, height: number): Buffer {
  const bytes = Buffer.from(bombPng(8, 8));
  bytes.writeUInt32BE(width, 16);
  bytes.writeUInt32BE(height, 20);
  return bytes;
}

test('a table before the size of a JPEG is not taken for the size', async () => {
  const bytes = await plain.clone().jpeg().toBuffer();
  const table = Buffer.from([0xff, 0xc4, 0, 9, 8, 0xff, 0xff, 0xff, 0xff, 0xff, 0xff]);
  const absolute = join(folder, 'table-first.jpg');
  writeFileSync(absolute, Buffer.concat([bytes.subarray(0, 2), table, bytes.subarray(2)]));
  expect(pictureHead(absolute)).toEqual({ kind: 'JPEG', width: 60, height: 40 });
});

test('four inks, sixteen bits, one grey, see-through and moving pictures become plain ones', async () => {
  const frames = sharp({ create: { width: 60, height: 80, channels: 4, background: '#88442280' } });
  const kinds: Readonly<Record<string, Uint8Array>> = {
    'inks.jpg': await plain.clone().toColourspace('cmyk').jpeg().toBuffer(),
    'deep.png': await plain.clone().toColourspace('rgb16').png().toBuffer(),
    'grey.png': await plain.clone().toColourspace('b-w').png().toBuffer(),
    'clear.png': await frames.clone().png().toBuffer(),
    'clear.webp': await frames.clone().webp().toBuffer(),
    'interlaced.png': await plain.clone().png({ progressive: true }).toBuffer(),
  };
  for (const [name, bytes] of Object.entries(kinds)) expect([name, await made(name, bytes)]).toEqual([name, []]);
});

test('what is no picture of ours, or only begins like one, is refused by its name', async () => {
  const jpeg = await plain.clone().jpeg().toBuffer();
  const drawing =
    '<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><image href="file:///etc/passwd"/></svg>';
  const bad: Readonly<Record<string, readonly [code: string, bytes: Uint8Array]>> = {
    'empty.jpg': ['photo-not-a-picture', new Uint8Array()],
    'drawing.jpg': ['photo-not-a-picture', Buffer.from(drawing)],
    'moving.jpg': ['photo-not-a-picture', await plain.clone().gif().toBuffer()],
    'scan.jpg': ['photo-not-a-picture', await plain.clone().tiff().toBuffer()],
    'paper.jpg': ['photo-not-a-picture', Buffer.from('%PDF-1.7\n')],
    'cut.jpg': ['photo-broken', jpeg.subarray(0, jpeg.length - 30)],
    'zeros.png': ['photo-broken', Buffer.concat([bombPng(50, 50).subarray(0, 33), Buffer.alloc(500)])],
    'none-high.png': ['photo-broken', bombPng(50, 0)],
    'bomb.png': ['photo-too-large', claiming(60_000, 60_000)],
    'widest.png': ['photo-too-large', claiming(2_147_483_647, 2_147_483_647)],
  };
  for (const [name, [code, bytes]] of Object.entries(bad)) {
    const problems = await made(name, bytes);
    expect([name, problems.map((one) => one.code + ' ' + one.at.file)]).toEqual([name, [`${code} photos/${name}`]]);
    expect(existsSync(join(folder, 'out/photos/small', name))).toBe(false);
  }
  expect(readdirSync(folder)).toContain('bomb.png');
});
