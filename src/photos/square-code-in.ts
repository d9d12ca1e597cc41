// The square code in a photograph, if there is one: the picture is made small first, so that size and time stay bounded.
import { decodeQR } from 'qr/decode.js';
import { decoder } from './picture-decoder.ts';
import { uprightOf } from './shrink-photo.ts';

/** Longest side in pixels that a code is looked for in; smaller first, for most tags are shot from near. */
const sides = [800, 1600] as const;

/** Milliseconds for the harder tries on one picture. */
const longest = 400;

/** The text of the code; undefined when none can be read. Rejects when the picture cannot be opened. */
export async function squareCodeIn(path: string): Promise<string | undefined> {
  const sharp = await decoder();
  const upright = await uprightOf(path, sharp);
  const pixels = await upright
    .flatten({ background: '#ffffff' })
    .resize(sides[1], sides[1], { fit: 'inside', withoutEnlargement: true })
    .toColourspace('srgb')
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  for (const side of sides) {
    const { width, height, channels } = pixels.info;
    const raw = { raw: { width, height, channels } };
    const small = await sharp(pixels.data, raw)
      .resize(side, side, { fit: 'inside', withoutEnlargement: true })
      .toColourspace('srgb')
      .raw()
      .toBuffer({ resolveWithObject: true });
    const found = read(small.data, small.info.width, small.info.height, small.info.channels);
    if (found !== undefined) return found;
  }
  return undefined;
}

function read(data: Uint8Array, width: number, height: number, channels: number): string | undefined {
  if (channels !== 3) return undefined;
  try {
    return decodeQR({ data, width, height }, { format: 'RGB', timeLimit: longest });
  } catch {
    // No code, or one that cannot be read: for a photo that is the usual thing.
    return undefined;
  }
}
