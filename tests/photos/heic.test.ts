// HEIC: read in a thread, upright and without metadata like the others; broken, lying and unreadable ones are named.
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { checkPhoto } from '../../src/photos/check-photo.ts';
import { heicDecoder } from '../../src/photos/heic-decoder.ts';
import { makePhotos } from '../../src/photos/photo-work.ts';
import { pictureHead } from '../../src/photos/picture-head.ts';
import type { Asset } from '../../src/source/files.ts';

/** 640 × 400: upper left quarter black, lower right grey, the rest white. */
const quarters = readFileSync(join(dirname(fileURLToPath(import.meta.url)), 'quarters.heic'));

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'splitpin-heic-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function put(file: string, bytes: Uint8Array): Asset {
  const absolute = join(folder, file);
  writeFileSync(absolute, bytes);
  const { size, mtimeMs } = statSync(absolute);
  return { file: `photos/${file}`, absolute, size, modified: mtimeMs };
}

/** The file with another size in its head, or other bytes in its picture. */
function changed(at: number, bytes: readonly number[]): Uint8Array {
  const copy = Buffer.from(quarters);
  bytes.forEach((byte, index) => copy.writeUInt8(byte, at + index));
  return copy;
}

const sizeAt = quarters.indexOf('ispe') + 8;

async function make(assets: readonly Asset[]) {
  return makePhotos({
    assets,
    into: join(folder, 'out'),
    known: new Map(),
    takeOver: () => false,
    progress: () => undefined,
  });
}

describe('a HEIC photo', () => {
  test('tells its kind and size in its head', () => {
    expect(pictureHead(put('a.heic', quarters).absolute)).toEqual({ kind: 'HEIC', width: 640, height: 400 });
  });

  test('says that a package is missing where it is', () => {
    const asset = put('a.heic', quarters);
    const told = checkPhoto(asset, () => false);
    expect(told?.code).toBe('photo-kind-not-read');
    expect(told?.message).toContain('heic-decode');
    expect(checkPhoto(asset, () => true)).toBeUndefined();
  });

  test('of more than 60 megapixels is refused before anything unpacks it', () => {
    const asset = put('large.heic', changed(sizeAt, [0, 0, 0x40, 0, 0, 0, 0x40, 0]));
    expect(checkPhoto(asset, () => true)?.code).toBe('photo-too-large');
  });

  test('that is AVIF by its brand is not read', () => {
    const asset = put('a.avif', Buffer.concat([quarters.subarray(0, 8), Buffer.from('avif'), quarters.subarray(12)]));
    expect(checkPhoto(asset)?.code).toBe('photo-kind-not-read');
  });

  test('cut off in its boxes is no picture', () => {
    expect(checkPhoto(put('cut.heic', quarters.subarray(0, 60)))?.code).toBe('photo-not-a-picture');
  });
});

describe.skipIf(heicDecoder() === undefined)('with the decoder installed, a HEIC photo', () => {
  test('is made into two JPEGs of the right picture', async () => {
    const { value, problems } = await make([put('a.heic', quarters), put('b.heic', quarters)]);
    expect(problems).toEqual([]);
    expect(value.map(({ file, width, height }) => [file, width, height])).toEqual([
      ['photos/a.heic', 640, 400],
      ['photos/b.heic', 640, 400],
    ]);
    const copy = sharp(join(folder, 'out', value[0]?.large ?? ''));
    expect((await copy.metadata()).format).toBe('jpeg');
    const { data, info } = await copy.greyscale().raw().toBuffer({ resolveWithObject: true });
    const grey = (x: number, y: number): number => data[(y * info.width + x) * info.channels] ?? -1;
    expect(grey(100, 100)).toBeLessThan(20);
    expect(grey(600, 100)).toBeGreaterThan(235);
    expect(Math.abs(grey(600, 350) - 153)).toBeLessThan(12);
  });

  test('that is broken inside is a problem with its name, and the next one is made', async () => {
    const inside = quarters.indexOf('mdat') + 4;
    const { value, problems } = await make([
      put('broken.heic', quarters.subarray(0, inside + 40)),
      put('whole.heic', quarters),
    ]);
    expect(problems.map(({ at, code }) => `${at.file} ${code}`)).toEqual(['photos/broken.heic photo-broken']);
    expect(value.map(({ file }) => file)).toEqual(['photos/whole.heic']);
  });
});
