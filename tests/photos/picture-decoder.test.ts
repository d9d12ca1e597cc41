// The decoder reads three kinds of picture and nothing else, and opening it in one thread takes no photo from another.
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import sharp from 'sharp';
import { expect, test, vi } from 'vitest';
import { decoder, openReaders, shutReaders } from '../../src/photos/picture-decoder.ts';

const packages = fileURLToPath(new URL('../../node_modules/@img/', import.meta.url));

/** Files of the decoder's library, as it is installed here; none where it was built on the computer itself. */
function libraries(): readonly string[] {
  if (!existsSync(packages)) return [];
  const folders = readdirSync(packages).map((name) => join(packages, name, 'lib'));
  return folders
    .filter((folder) => existsSync(folder))
    .flatMap((folder) => readdirSync(folder).map((name) => join(folder, name)))
    .filter((file) => /libvips[^/\\]*\.(?:so|dylib|dll)/.test(file) && !/libvips-cpp\.d/.test(file));
}

test('opening it opens no reader again that was shut a moment before', async () => {
  vi.resetModules();
  const begun = await import('../../src/photos/picture-decoder.ts');
  const opened = vi.spyOn(sharp, 'unblock');
  const shut = vi.spyOn(sharp, 'block');
  await begun.decoder();
  expect([opened.mock.calls, shut.mock.calls]).toEqual([[], [[{ operation: shutReaders }]]]);
  vi.restoreAllMocks();
});

test.skipIf(libraries().length === 0)('every reader of the library is one of ours or is shut', () => {
  const names = libraries().flatMap((file) => readFileSync(file, 'latin1').match(/VipsForeignLoad[A-Z]\w*/g) ?? []);
  const known = [...openReaders, ...shutReaders];
  const isOf = (name: string): boolean =>
    known.some((reader) => name === reader || ['File', 'Buffer', 'Source'].some((from) => name === reader + from));
  expect(openReaders.filter((reader) => names.includes(reader))).toEqual(openReaders);
  expect([...new Set(names)].filter((name) => !isOf(name))).toEqual([]);
});

test('what is not one of the three kinds is refused, whatever its name', async () => {
  await decoder();
  const plain = sharp({ create: { width: 8, height: 8, channels: 3, background: '#884422' } });
  for (const kind of ['jpeg', 'png', 'webp'] as const)
    expect((await sharp(await plain.clone().toFormat(kind).toBuffer()).metadata()).format).toBe(kind);
  const others = [
    Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="8" height="8"/>'),
    await plain.clone().gif().toBuffer(),
    await plain.clone().tiff().toBuffer(),
    Buffer.from('1,2\n3,4\n'),
  ];
  for (const bytes of others) await expect(sharp(bytes).metadata()).rejects.toThrow(/unsupported image format/);
});

test('a photo is read while another thread opens the decoder', async () => {
  await decoder();
  const photo = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#884422' } })
    .jpeg()
    .toBuffer();
  const begin = `
    const { workerData, parentPort } = require('node:worker_threads');
    const sharp = require(workerData.sharp);
    parentPort.postMessage('begun');
    for (let time = 0; time < 4000; time += 1) sharp.block({ operation: workerData.shut });`;
  const workerData = { sharp: createRequire(import.meta.url).resolve('sharp'), shut: shutReaders };
  const worker = new Worker(begin, { eval: true, workerData });
  const ended = new Promise((done) => worker.once('exit', done));
  let opens = true;
  void ended.then(() => (opens = false));
  await new Promise((begun) => worker.once('message', begun));
  let read = 0;
  while (opens || read === 0) read += (await sharp(photo).metadata()).width === 8 ? 1 : 0;
  expect(await ended).toBe(0);
});
