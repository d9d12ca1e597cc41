// A picture as it goes to a next owner: upright, whole in size, without a word of what the camera wrote into it, marked parts black.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { decoder } from './picture-decoder.ts';
import { uprightOf } from './shrink-photo.ts';
import { pictureHead } from './picture-head.ts';

/** A part to be covered, as shares of width and height from 0 to 1. */
export interface CoveredPart {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Writes the picture in its own kind (HEIC as JPEG). Rejects when it is broken. */
export async function cleanPicture(original: string, to: string, cover: readonly CoveredPart[]): Promise<void> {
  const sharp = await decoder();
  const kind = pictureHead(original)?.kind;
  const upright = await uprightOf(original, sharp);
  // What is covered is covered in the pixels: nothing of it lies beneath.
  const { data, info } = await upright.flatten({ background: '#ffffff' }).raw().toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  for (const part of cover) blacken(data, { width, height, channels }, part);
  const picture = sharp(data, { raw: { width, height, channels } });
  const made =
    kind === 'PNG' ? picture.png() : kind === 'WebP' ? picture.webp({ quality: 90 }) : picture.jpeg({ quality: 90 });
  mkdirSync(dirname(to), { recursive: true });
  writeFileSync(to, await made.toBuffer(), { flag: 'wx' });
}

function blacken(
  pixels: Buffer,
  { width, height, channels }: { readonly width: number; readonly height: number; readonly channels: number },
  part: CoveredPart,
): void {
  const at = (share: number, side: number): number => Math.min(side, Math.max(0, share * side));
  const [left, right] = [Math.floor(at(part.left, width)), Math.ceil(at(part.left + part.width, width))];
  const [top, bottom] = [Math.floor(at(part.top, height)), Math.ceil(at(part.top + part.height, height))];
  for (let y = top; y < bottom; y += 1) pixels.fill(0, (y * width + left) * channels, (y * width + right) * channels);
}
