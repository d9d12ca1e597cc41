// One photo into two small JPEGs, turned upright, with nothing of its metadata (no place, no camera).
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Sharp, default as sharpFunction } from 'sharp';
import { mostPixels } from './check-photo.ts';
import { unpackHeic } from './heic-decoder.ts';
import { decoder } from './picture-decoder.ts';
import { pictureHead } from './picture-head.ts';
import { largeSide, smallSide } from './photo-names.ts';

/** Pixel sizes of the two copies as written; 0 for a small one that was not wanted. */
export interface PhotoSize {
  readonly width: number;
  readonly height: number;
  readonly smallWidth: number;
  readonly smallHeight: number;
}

/** Part of every photo's key: raise it when the settings below change. */
export const shrinkSettings = 'jpeg 80, 1600 and 400, upright, no metadata, 1';

/**
 * Writes both copies, or only the large one, which paper takes; the small one is made from the large one, which saves a second
 * decoding. Rejects when the photo is broken.
 */
export async function shrinkPhoto(original: string, large: string, small: string | undefined): Promise<PhotoSize> {
  const sharp = await decoder();
  mkdirSync(dirname(large), { recursive: true });
  const first = await fit(await uprightOf(original, sharp), largeSide)
    .flatten({ background: '#ffffff' })
    .jpeg({ quality: 80 })
    .toFile(large);
  if (small === undefined) return { width: first.width, height: first.height, smallWidth: 0, smallHeight: 0 };
  mkdirSync(dirname(small), { recursive: true });
  const second = await fit(sharp(large), smallSide).jpeg({ quality: 75 }).toFile(small);
  return { width: first.width, height: first.height, smallWidth: second.width, smallHeight: second.height };
}

/** HEIC comes unpacked and upright; sharp's own build cannot read it. */
export async function uprightOf(original: string, sharp: typeof sharpFunction): Promise<Sharp> {
  if (pictureHead(original)?.kind !== 'HEIC')
    return sharp(original, { limitInputPixels: mostPixels, failOn: 'error', sequentialRead: true }).autoOrient();
  const { width, height, data } = await unpackHeic(original, mostPixels);
  return sharp(data, { raw: { width, height, channels: 4 } });
}

function fit(picture: Sharp, side: number): Sharp {
  return picture.resize(side, side, { fit: 'inside', withoutEnlargement: true });
}
