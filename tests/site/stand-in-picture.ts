// A small grey picture in place of a photo, where a test needs a file that a browser can show.
import sharp from 'sharp';

export function standInPicture(): Promise<Uint8Array> {
  return sharp({ create: { width: 8, height: 6, channels: 3, background: '#999' } })
    .jpeg()
    .toBuffer();
}
