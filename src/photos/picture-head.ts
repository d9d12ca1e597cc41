// Kind and pixel size of a picture from its first bytes: enough to refuse a hostile or huge one before any decoder sees it.
import { closeSync, openSync, readSync } from 'node:fs';
import { heifHead } from './heif-head.ts';

export interface PictureHead {
  readonly kind: 'JPEG' | 'PNG' | 'WebP' | 'HEIC' | 'AVIF';
  /** Pixels as stored, before any turning. */
  readonly width: number;
  readonly height: number;
}

/** Bytes of the file from a position on; fewer at its end. */
export type Reader = (position: number, length: number) => Buffer;

/** Reads the head of a picture file. Undefined: not a JPEG, PNG, WebP, HEIC or AVIF, or broken in its head, whatever its name says. */
export function pictureHead(path: string): PictureHead | undefined {
  const file = openSync(path, 'r');
  const read: Reader = (position, length) => {
    const buffer = Buffer.alloc(length);
    return buffer.subarray(0, readSync(file, buffer, 0, length, position));
  };
  try {
    const head = read(0, 32);
    return pngHead(head) ?? webpHead(head) ?? jpegHead(head, read) ?? heifHead(head, read);
  } finally {
    closeSync(file);
  }
}

/** PNG (ISO/IEC 15948): the header chunk always comes first, width and height in its first eight bytes. */
function pngHead(head: Buffer): PictureHead | undefined {
  if (head.length < 24 || head.toString('latin1', 0, 8) !== '\x89PNG\r\n\x1a\n') return undefined;
  if (head.toString('latin1', 12, 16) !== 'IHDR') return undefined;
  return { kind: 'PNG', width: head.readUInt32BE(16), height: head.readUInt32BE(20) };
}

/** WebP (RFC 9649): three forms of the first chunk, each with its own way of writing the size. */
function webpHead(head: Buffer): PictureHead | undefined {
  if (head.length < 30 || head.toString('latin1', 0, 4) !== 'RIFF' || head.toString('latin1', 8, 12) !== 'WEBP')
    return undefined;
  const form = head.toString('latin1', 12, 16);
  if (form === 'VP8X') return { kind: 'WebP', width: head.readUIntLE(24, 3) + 1, height: head.readUIntLE(27, 3) + 1 };
  if (form === 'VP8 ')
    return { kind: 'WebP', width: head.readUInt16LE(26) & 0x3fff, height: head.readUInt16LE(28) & 0x3fff };
  if (form !== 'VP8L') return undefined;
  const bits = head.readUInt32LE(21);
  return { kind: 'WebP', width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
}

/** JPEG (ISO/IEC 10918-1): step over the segments to the start of frame. A picture has far fewer than 200 before it. */
function jpegHead(head: Buffer, read: Reader): PictureHead | undefined {
  if (head.length < 4 || head.readUInt16BE(0) !== 0xffd8) return undefined;
  let at = 2;
  for (let segment = 0; segment < 200; segment += 1) {
    const bytes = read(at, 9);
    if (bytes.length < 9 || bytes[0] !== 0xff) return undefined;
    const marker = bytes.readUInt8(1);
    if (isStartOfFrame(marker)) return { kind: 'JPEG', width: bytes.readUInt16BE(7), height: bytes.readUInt16BE(5) };
    // A fill byte is 0xff again; the marker follows it.
    at += marker === 0xff ? 1 : 2 + bytes.readUInt16BE(2);
  }
  return undefined;
}

/** SOF0 to SOF15 without the three markers in that range that are tables. */
function isStartOfFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}
