// Photos: small upright copies without metadata; hostile, huge and broken ones named and refused; nothing made twice.
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { checkPhoto } from '../../src/photos/check-photo.ts';
import { photoNames } from '../../src/photos/photo-names.ts';
import { makePhotos, type MadePhoto } from '../../src/photos/photo-work.ts';
import { pictureHead } from '../../src/photos/picture-head.ts';
import type { Asset } from '../../src/source/files.ts';
import { bombPng } from './bomb-png.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'splitpin-photos-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function put(file: string, bytes: Uint8Array): Asset {
  const absolute = join(folder, file);
  writeFileSync(absolute, bytes);
  const { size, mtimeMs } = statSync(absolute);
  return { file: `photos/${file}`, absolute, size, modified: mtimeMs };
}

function picture(width: number, height: number): ReturnType<typeof sharp> {
  return sharp({ create: { width, height, channels: 3, background: '#884422' } });
}

async function make(assets: readonly Asset[], known: readonly MadePhoto[] = [], taken: string[] = []) {
  return makePhotos({
    assets,
    into: join(folder, 'out'),
    known: new Map(known.map((photo) => [photo.file, photo])),
    takeOver: (file) => {
      taken.push(file);
      return existsSync(join(folder, 'out', file));
    },
    progress: () => undefined,
  });
}

describe('the head of a picture', () => {
  test('gives kind and size of JPEG, PNG and all three forms of WebP', async () => {
    const one = picture(321, 123);
    const lossless = await one.clone().webp({ lossless: true }).toBuffer();
    const withAlpha = await one.clone().ensureAlpha(0.5).webp().toBuffer();
    const files = [
      put('a.jpg', await one.clone().withMetadata({ orientation: 6 }).jpeg().toBuffer()),
      put('b.jpg', await one.clone().jpeg({ progressive: true }).toBuffer()),
      put('c.png', await one.clone().png().toBuffer()),
      put('d.webp', await one.clone().webp().toBuffer()),
      put('e.webp', lossless),
      put('f.webp', withAlpha),
    ];
    const heads = files.map((file) => pictureHead(file.absolute));
    expect(heads.map((head) => head?.kind)).toEqual(['JPEG', 'JPEG', 'PNG', 'WebP', 'WebP', 'WebP']);
    for (const head of heads) expect([head?.width, head?.height]).toEqual([321, 123]);
  });

  test('is not found in a drawing, a text, an empty file or half a head', async () => {
    const jpeg = await picture(40, 30).jpeg().toBuffer();
    const files = [
      put('drawing.jpg', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')),
      put('text.png', Buffer.from('not a picture')),
      put('empty.jpg', Buffer.alloc(0)),
      put('half.jpg', jpeg.subarray(0, 12)),
    ];
    for (const file of files) expect(checkPhoto(file)?.code).toBe('photo-not-a-picture');
    for (const file of files) expect(checkPhoto(file)?.at.file).toBe(file.file);
  });

  test('tells of a picture of more than 60 megapixels before anything unpacks it', () => {
    expect(checkPhoto(put('bomb.png', bombPng(9000, 7000)))?.code).toBe('photo-too-large');
    expect(checkPhoto(put('large.png', bombPng(8000, 7000)))).toBeUndefined();
  });
});

describe('the copies', () => {
  test('are turned upright, fit their sides, and carry no metadata', async () => {
    const exif = { IFD0: { Make: 'camera', Copyright: 'owner' }, IFD3: { GPSLatitudeRef: 'N' } };
    const original = await picture(3000, 2000).withExif(exif).withMetadata({ orientation: 6 }).jpeg().toBuffer();
    expect(original.includes('camera') || original.includes('Exif')).toBe(true);
    const { value, problems } = await make([put('turned.jpg', original)]);
    expect(problems).toEqual([]);
    const [made] = value;
    expect([made?.width, made?.height, made?.smallWidth, made?.smallHeight]).toEqual([1067, 1600, 267, 400]);
    const copy = await sharp(join(folder, 'out', made?.large ?? '')).metadata();
    expect([copy.format, copy.width, copy.height, copy.exif, copy.orientation]).toEqual([
      'jpeg',
      1067,
      1600,
      undefined,
      undefined,
    ]);
  });

  test('keep a small picture as small as it is', async () => {
    const { value } = await make([put('small.png', await picture(200, 100).png().toBuffer())]);
    expect([value[0]?.width, value[0]?.height]).toEqual([200, 100]);
  });

  test('are named after the original, each once', () => {
    const names = ['photos/a b.jpg', 'photos/a b.png', "photos/l'été/Größe.webp", 'documents/bill.jpeg'].map(
      photoNames,
    );
    expect(new Set(names.flatMap(({ large, small }) => [large, small])).size).toBe(8);
    expect(names[0]).toEqual({ large: 'photos/large/a b.jpg', small: 'photos/small/a b.jpg' });
    expect(names[1]?.large).toBe('photos/large/a b.png.jpg');
  });

  test('are the same bytes each time', async () => {
    const asset = put('again.jpg', await picture(1800, 900).jpeg().toBuffer());
    const first = (await make([asset])).value[0];
    const bytes = readFileSync(join(folder, 'out', first?.large ?? ''));
    rmSync(join(folder, 'out'), { recursive: true });
    await make([asset]);
    expect(readFileSync(join(folder, 'out', first?.large ?? '')).equals(bytes)).toBe(true);
  });
});

describe('a bad photo', () => {
  test('cut short is a problem with its name, and the others are made', async () => {
    const whole = await sharp({
      create: {
        width: 800,
        height: 600,
        channels: 3,
        background: '#123',
        noise: { type: 'gaussian', mean: 128, sigma: 60 },
      },
    })
      .jpeg()
      .toBuffer();
    const { value, problems } = await make([
      put('cut.jpg', whole.subarray(0, whole.length >> 1)),
      put('drawing.jpg', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')),
      put('whole.jpg', whole),
    ]);
    expect(problems.map((problem) => problem.at.file + ' ' + problem.code).sort()).toEqual([
      'photos/cut.jpg photo-broken',
      'photos/drawing.jpg photo-not-a-picture',
    ]);
    expect(value.map((photo) => photo.file)).toEqual(['photos/whole.jpg']);
  });

  test('a drawing with the head of a PNG is not drawn', async () => {
    const head = (await picture(20, 20).png().toBuffer()).subarray(0, 33);
    const { problems } = await make([put('odd.png', Buffer.concat([head, Buffer.from('<svg/>')]))]);
    expect(problems[0]?.code).toBe('photo-broken');
  });
});

describe('a photo that is known', () => {
  test('is not opened while size and time are the same, and not made again while its content is', async () => {
    const asset = put('known.jpg', await picture(900, 600).jpeg().toBuffer());
    const [first] = (await make([asset])).value;
    if (first === undefined) throw new Error('not made');
    const gone = { ...asset, absolute: join(folder, 'is-not-there.jpg') };
    expect((await make([gone], [first])).value).toEqual([first]);

    utimesSync(asset.absolute, 1_000_000, 1_000_000);
    const touched = { ...asset, modified: statSync(asset.absolute).mtimeMs };
    const large = join(folder, 'out', first.large);
    utimesSync(large, 5, 5);
    const [again] = (await make([touched], [first])).value;
    expect(again?.key).toBe(first.key);
    expect(statSync(large).mtimeMs).toBe(5000);

    const other = put('known.jpg', await picture(901, 600).jpeg().toBuffer());
    const [changed] = (await make([other], [first])).value;
    expect(changed?.width).toBe(901);
    expect(statSync(large).mtimeMs).not.toBe(5000);
  });
});
