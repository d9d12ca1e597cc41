// Kind and pixel size of a HEIC or AVIF picture (ISO/IEC 23008-12): boxes in boxes, the size in the largest "ispe" of the "meta" box.
import type { PictureHead, Reader } from './picture-head.ts';

/** A phone writes one to four kilobytes here; what is longer is not looked at. */
const mostMeta = 262_144;

/** Brands of still pictures coded with HEVC, and with AV1. */
const heicBrands = ['heic', 'heix', 'heim', 'heis', 'mif1'];
const avifBrands = ['avif', 'avis'];

/** Reads the head of a HEIF file; undefined when it is none, or its boxes do not hold together. */
export function heifHead(head: Buffer, read: Reader): PictureHead | undefined {
  const kind = kindOf(head);
  if (kind === undefined) return undefined;
  const meta = metaBox(head.readUInt32BE(0), read);
  if (meta === undefined) return undefined;
  // The picture may be a mosaic of tiles that have a size each: the whole is the largest.
  const sizes = sizesIn(meta).toSorted((a, b) => b.width * b.height - a.width * a.height);
  return sizes[0] === undefined ? undefined : { kind, ...sizes[0] };
}

function kindOf(head: Buffer): 'HEIC' | 'AVIF' | undefined {
  if (head.length < 16 || head.toString('latin1', 4, 8) !== 'ftyp') return undefined;
  const brand = head.toString('latin1', 8, 12);
  if (avifBrands.includes(brand)) return 'AVIF';
  return heicBrands.includes(brand) ? 'HEIC' : undefined;
}

/** The "meta" box stands first or second after the brands. */
function metaBox(after: number, read: Reader): Buffer | undefined {
  let at = after;
  for (let box = 0; box < 8; box += 1) {
    const head = read(at, 8);
    if (head.length < 8) return undefined;
    const length = head.readUInt32BE(0);
    if (length < 8) return undefined;
    if (head.toString('latin1', 4, 8) === 'meta') return length > mostMeta ? undefined : read(at, length);
    at += length;
  }
  return undefined;
}

/** Every image spatial extents property: length 20, name, version, width, height. */
function sizesIn(meta: Buffer): readonly { readonly width: number; readonly height: number }[] {
  const found: { width: number; height: number }[] = [];
  for (let at = meta.indexOf('ispe'); at !== -1; at = meta.indexOf('ispe', at + 4)) {
    if (at < 4 || at + 16 > meta.length || meta.readUInt32BE(at - 4) !== 20) continue;
    found.push({ width: meta.readUInt32BE(at + 8), height: meta.readUInt32BE(at + 12) });
  }
  return found;
}
