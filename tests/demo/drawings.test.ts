// The demo's pictures are the drawings of the script: all of them, small, of one size, and their captions say what they are.
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { drawingPng, drawings } from '../../src/tools/drawings.ts';
import { demo, root } from './read-folder.ts';

const folder = join(root, 'demo-bike/photos');
const pictures = readdirSync(folder).sort();

test('every picture is drawn by the script, and every drawing is a picture', () => {
  expect(pictures).toEqual(drawings.map((drawing) => drawing.name + '.png').sort());
  expect(pictures.length).toBeGreaterThanOrEqual(14);
});

test('every picture is named in a record, with a caption that says drawing or is kept private', () => {
  const photos = demo.records.jobs.flatMap((job) => job.photos);
  expect(new Set(photos.map((photo) => photo.file))).toEqual(new Set(pictures.map((name) => 'photos/' + name)));
  const silent = photos.filter((photo) => !photo.private && !/drawing/i.test(photo.caption));
  expect(silent.map((photo) => photo.file)).toEqual([]);
});

describe.each(drawings.map((drawing) => [drawing.name, drawing] as const))('%s', (name, drawing) => {
  test('is 1000 by 750 and under 40 kB', async () => {
    const file = join(folder, name + '.png');
    const { width, height, format } = await sharp(file).metadata();
    expect([width, height, format]).toEqual([1000, 750, 'png']);
    expect(statSync(file).size).toBeLessThan(40_000);
  });

  test('shows what the script draws', async () => {
    const grey = (input: Uint8Array): Promise<Buffer> => sharp(input).resize(100, 75).greyscale().raw().toBuffer();
    const [kept, drawn] = await Promise.all([
      grey(readFileSync(join(folder, name + '.png'))),
      grey(await drawingPng(drawing)),
    ]);
    const apart = kept.reduce((sum, value, n) => sum + Math.abs(value - (drawn[n] ?? 0)), 0) / kept.length;
    expect(apart).toBeLessThan(1);
  });
});
