// Photographs for the workload: 1200 by 900 pixels, about as large as a telephone's after our own shrinking, each another, the same every time.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';

/** Writes so many photos into the folder `photos` of a machine; gives their names below it. */
export async function writePictures(machine: string, count: number): Promise<readonly string[]> {
  mkdirSync(join(machine, 'photos'), { recursive: true });
  const names: string[] = [];
  for (let number = 1; number <= count; number += 1) {
    const name = `photos/bench-${String(number).padStart(3, '0')}.jpg`;
    writeFileSync(join(machine, name), await picture(number));
    names.push(name);
  }
  return names;
}

/** Coarse noise made smooth has about the detail of a photograph of metal on a bench. */
async function picture(seed: number): Promise<Buffer> {
  const [width, height] = [150, 112];
  let state = seed * 2_654_435_761;
  const noise = Buffer.from(
    Array.from({ length: width * height * 3 }, () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
      return 60 + ((state >>> 24) >> 1);
    }),
  );
  const small = sharp(noise, { raw: { width, height, channels: 3 } });
  return small.resize(1200, 900, { kernel: 'cubic' }).jpeg({ quality: 80 }).toBuffer();
}
