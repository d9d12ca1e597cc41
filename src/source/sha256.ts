// SHA-256 of a text, without a platform’s library, so that records can be held against their list wherever they are read.
// FIPS 180-4, “Secure Hash Standard”, sections 4.1.2, 5.1.1 and 6.2.2; the constants are its own.

const block = 64;

/** The first 32 bits of the fractional parts of the square or cube roots of the first primes, as the standard defines its constants. */
const primes = firstPrimes(block);
const rounds = primes.map((prime) => fraction(Math.cbrt(prime)));
const begin = primes.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)));

/** Hexadecimal, in small letters, over the text as UTF-8. */
export function sha256(text: string): string {
  const bytes = padded(new TextEncoder().encode(text));
  const view = new DataView(bytes.buffer);
  const state = Int32Array.from(begin);
  const words = new Int32Array(block);
  for (let at = 0; at < bytes.length; at += block) {
    for (let i = 0; i < 16; i += 1) words[i] = view.getInt32(at + i * 4);
    for (let i = 16; i < block; i += 1)
      words[i] =
        (small1(word(words, i - 2)) + word(words, i - 7) + small0(word(words, i - 15)) + word(words, i - 16)) | 0;
    mix(state, words);
  }
  return Array.from(state, (one) => (one >>> 0).toString(16).padStart(8, '0')).join('');
}

function mix(state: Int32Array, words: Int32Array): void {
  const now = Int32Array.from(state);
  for (let i = 0; i < block; i += 1) {
    const e = word(now, 4);
    const choice = (e & word(now, 5)) ^ (~e & word(now, 6));
    const one = (word(now, 7) + big1(e) + choice + (rounds[i] ?? 0) + word(words, i)) | 0;
    const a = word(now, 0);
    const majority = (a & word(now, 1)) ^ (a & word(now, 2)) ^ (word(now, 1) & word(now, 2));
    const two = (big0(a) + majority) | 0;
    now.copyWithin(1, 0, 7);
    now[4] = (word(now, 4) + one) | 0;
    now[0] = (one + two) | 0;
  }
  for (let i = 0; i < 8; i += 1) state[i] = (word(state, i) + word(now, i)) | 0;
}

/** One bit set, zeros, and the length in bits at the end of the last block. */
function padded(bytes: Uint8Array): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(Math.ceil((bytes.length + 9) / block) * block);
  all.set(bytes);
  all[bytes.length] = 0x80;
  new DataView(all.buffer).setBigUint64(all.length - 8, BigInt(bytes.length) * 8n);
  return all;
}

function word(of: Int32Array, at: number): number {
  return of[at] ?? 0;
}
function turn(of: number, by: number): number {
  return (of >>> by) | (of << (32 - by));
}
function big0(of: number): number {
  return turn(of, 2) ^ turn(of, 13) ^ turn(of, 22);
}
function big1(of: number): number {
  return turn(of, 6) ^ turn(of, 11) ^ turn(of, 25);
}
function small0(of: number): number {
  return turn(of, 7) ^ turn(of, 18) ^ (of >>> 3);
}
function small1(of: number): number {
  return turn(of, 17) ^ turn(of, 19) ^ (of >>> 10);
}

/** 32 bits of what stands after the point; the doubles of square and cube roots of small primes hold more than that. */
function fraction(of: number): number {
  return Math.floor((of - Math.floor(of)) * 0x1_0000_0000) | 0;
}

function firstPrimes(many: number): readonly number[] {
  const found: number[] = [];
  for (let one = 2; found.length < many; one += 1) if (found.every((prime) => one % prime !== 0)) found.push(one);
  return found;
}
