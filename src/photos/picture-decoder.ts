// The decoder of photos, with every reader shut but the three that are ours: it looks at content, not at names, and a drawing called
// `photo.jpg` would be drawn.
import type { default as sharpFunction } from 'sharp';

const reader = (name: string): string => `VipsForeignLoad${name}`;

/** Readers that photos need, by the name of the decoder’s library. */
export const openReaders = ['Jpeg', 'Png', 'Webp'].map(reader);

/**
 * All others that the library knows in any of its builds. They are named one by one since the library is one for all threads of a
 * process: shutting all and opening ours again would refuse the photo that another thread opens at that very moment.
 */
export const shutReaders = [
  'Analyze',
  'Csv',
  'DcRaw',
  'Fits',
  'Heif',
  'Jp2k',
  'Jxl',
  'Magick',
  'Magick7',
  'Mat',
  'Matrix',
  'Nifti',
  'Nsgif',
  'Openexr',
  'Openslide',
  'Pdf',
  'Ppm',
  'Rad',
  'Raw',
  'Svg',
  'Tiff',
  'Uhdr',
  'Vips',
].map(reader);

let loaded: Promise<typeof sharpFunction> | undefined;

/** Loads the decoder when first needed. What it shuts stays shut for the whole process, whoever else uses the same library. */
export function decoder(): Promise<typeof sharpFunction> {
  loaded ??= import('sharp').then(({ default: sharp }) => {
    sharp.block({ operation: shutReaders });
    sharp.cache(false);
    sharp.concurrency(1);
    return sharp;
  });
  return loaded;
}
