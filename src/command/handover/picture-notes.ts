// What a picture says of itself besides its pixels: place, camera, comments. A picture that goes has none of it.

/** Names of the parts of a picture file that hold notes; empty for a clean one, and for what is no picture. */
export function pictureNotes(bytes: Buffer): readonly string[] {
  if (bytes.length > 4 && bytes.readUInt16BE(0) === 0xffd8) return jpegNotes(bytes);
  if (bytes.toString('latin1', 0, 8) === '\x89PNG\r\n\x1a\n') return pngNotes(bytes);
  if (bytes.toString('latin1', 0, 4) === 'RIFF' && bytes.toString('latin1', 8, 12) === 'WEBP') return webpNotes(bytes);
  return [];
}

const jpegParts: Readonly<Record<number, string>> = {
  0xe1: 'Exif or XMP',
  0xec: 'picture notes',
  0xed: 'captions of a picture archive',
  0xfe: 'a comment',
};

/** Segments up to the pixels (ITU-T T.81, B.1); colour profiles and frame headers are no notes. */
function jpegNotes(bytes: Buffer): readonly string[] {
  const found: string[] = [];
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xda || marker === 0xd9) break;
    const note = jpegParts[marker];
    if (note !== undefined) found.push(note);
    at += 2 + bytes.readUInt16BE(at + 2);
  }
  return found;
}

const pngParts = new Set(['tEXt', 'iTXt', 'zTXt', 'eXIf', 'tIME']);

function pngNotes(bytes: Buffer): readonly string[] {
  const found: string[] = [];
  for (let at = 8; at + 12 <= bytes.length; at += 12 + bytes.readUInt32BE(at)) {
    const kind = bytes.toString('latin1', at + 4, at + 8);
    if (pngParts.has(kind)) found.push(kind);
  }
  return found;
}

function webpNotes(bytes: Buffer): readonly string[] {
  const found: string[] = [];
  for (let at = 12; at + 8 <= bytes.length;) {
    const kind = bytes.toString('latin1', at, at + 4);
    if (kind === 'EXIF' || kind === 'XMP ') found.push(kind.trim());
    const size = bytes.readUInt32LE(at + 4);
    at += 8 + size + (size % 2);
  }
  return found;
}
