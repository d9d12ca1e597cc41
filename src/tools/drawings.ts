// Draws the demo's pictures again: `npx tsx src/tools/drawings.ts` writes demo-bike/photos/*.png, and the same bytes every time.
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { bench } from './drawing/bench.ts';
import { drawingSvg } from './drawing/drawing.ts';
import type { Drawing } from './drawing/drawing.ts';
import { engineParts } from './drawing/engine-parts.ts';
import { marksAndNumbers } from './drawing/marks-and-numbers.ts';
import { outdoors } from './drawing/outdoors.ts';

/** Every picture of the demo. */
export const drawings: readonly Drawing[] = [...outdoors, ...marksAndNumbers, ...engineParts, ...bench];

/** A small PNG of sixteen greys, 1000 × 750. */
export function drawingPng(drawing: Drawing): Promise<Uint8Array> {
  return sharp(Buffer.from(drawingSvg(drawing)))
    .greyscale()
    .png({ palette: true, colours: 16, compressionLevel: 9, dither: 0 })
    .toBuffer();
}

async function writeDrawings(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true });
  for (const drawing of drawings) await writeFile(folder + drawing.name + '.png', await drawingPng(drawing));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await writeDrawings(fileURLToPath(new URL('../../demo-bike/photos/', import.meta.url)));
}
