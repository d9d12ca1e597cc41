// Short fingerprints of texts and of plain data.
import { hash } from 'node:crypto';

/** 128 bits of SHA-256 as 32 hexadecimal digits: enough to tell texts apart. */
export function hashOf(text: string | Uint8Array): string {
  return shortHash(hash('sha256', text, 'hex'));
}

/** The same from a whole SHA-256 in hexadecimal digits. */
export function shortHash(whole: string): string {
  return whole.slice(0, 32);
}

/** Fingerprint of plain readonly data; equal data written in the same order gives the same one. */
export function hashOfData(...data: readonly unknown[]): string {
  return hashOf(JSON.stringify(data));
}
