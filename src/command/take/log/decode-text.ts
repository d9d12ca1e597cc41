// Bytes of a text that another program saved, in whichever encoding it was: said, never put right in silence.

export interface Decoded {
  readonly text: string;
  /** As it is told: `UTF-8`, `UTF-16`, `Windows-1252`. */
  readonly encoding: string;
}

/**
 * The text of a file. A byte order mark decides; then UTF-16 shows by its empty bytes, UTF-8 by being nothing else; what is left is
 * Windows-1252, in which Western spreadsheets save. Undefined when it is no text at all.
 */
export function decodeText(bytes: Uint8Array): Decoded | undefined {
  const [first, second, third] = bytes;
  if (first === 0xef && second === 0xbb && third === 0xbf) return strictly('utf-8', bytes.subarray(3), 'UTF-8');
  if (first === 0xff && second === 0xfe) return strictly('utf-16le', bytes.subarray(2), 'UTF-16');
  if (first === 0xfe && second === 0xff) return strictly('utf-16be', bytes.subarray(2), 'UTF-16');
  const order = bareUtf16(bytes);
  if (order !== undefined) return strictly(order, bytes, 'UTF-16');
  if (bytes.includes(0)) return undefined;
  return strictly('utf-8', bytes, 'UTF-8') ?? { text: western(bytes), encoding: 'Windows-1252' };
}

function strictly(encoding: string, bytes: Uint8Array, name: string): Decoded | undefined {
  try {
    return { text: new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes), encoding: name };
  } catch {
    return undefined;
  }
}

/** In UTF-16 without a mark every second byte of Western text is empty, and the others are not. */
function bareUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | undefined {
  const head = bytes.subarray(0, 512);
  if (head.length < 4) return undefined;
  const empty = [0, 0];
  for (const [index, byte] of head.entries()) if (byte === 0) empty[index % 2] = (empty[index % 2] ?? 0) + 1;
  const [even = 0, odd = 0] = empty;
  const many = head.length / 4;
  if (odd > many && even === 0) return 'utf-16le';
  return even > many && odd === 0 ? 'utf-16be' : undefined;
}

/** Windows-1252 from 0x80 to 0x9f, as the Encoding Standard has it; below and above it is Latin-1. Decoders of some Nodes leave these out. */
const upper = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

function western(bytes: Uint8Array): string {
  return Buffer.from(bytes)
    .toString('latin1')
    .replaceAll(/[\u0080-\u009f]/gu, (character) => upper.charAt(character.charCodeAt(0) - 0x80));
}
