// A photo put in its place: the JPEG that the photo shelf hands over, embedded as it is, once a document.
import type { PhotoItem } from '../layout/placed.ts';
import { points } from './numbers.ts';
import { rectangle } from './draw-item.ts';
import type { Printing } from './draw-page.ts';
import type { OpenPage } from './open-page.ts';

/** Where the prepared JPEG of a photo is, and its size in pixels. */
export type PhotoAt = (
  file: string,
) => { readonly path: string; readonly width: number; readonly height: number } | undefined;

/** Operators for a photo; a photo that cannot be read leaves an empty frame. */
export function drawPhoto(item: PhotoItem, printing: Printing, page: OpenPage): string {
  const image = opened(item.file, printing);
  if (image === undefined) return '0.35 w [] 0 d ' + rectangle(item) + ' S';
  page.drawings.set(image.label, image.number);
  const matrix = [item.width, 0, 0, -item.height, item.x, item.y + item.height].map(points).join(' ');
  return 'q ' + matrix + ' cm /' + image.label + ' Do Q';
}

interface Opened {
  readonly label: string;
  readonly number: number;
}

function opened(file: string, { doc, photo }: Printing): Opened | undefined {
  const at = photo(file);
  if (at === undefined) return undefined;
  try {
    const image = doc.openImage(at.path);
    if (!image.obj) image.embed(doc);
    return image.obj === null ? undefined : { label: image.label, number: image.obj.id };
  } catch {
    return undefined;
  }
}
