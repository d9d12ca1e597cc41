// The fingerprint of the records that were read. Texts are kept from reading to reading, so each is hashed once.
import { hash } from 'node:crypto';
import type { SourceFile } from '../disk.ts';
import { fingerprintList } from '../records/fingerprint.ts';

const known = new WeakMap<SourceFile, string>();

/** SHA-256 of a text or of bytes, hexadecimal. */
export function sha256(bytes: string | Uint8Array): string {
  return hash('sha256', bytes);
}

/** The list of the hashes of some records, as it is kept beside them. */
export function fingerprintListOf(files: readonly SourceFile[]): string {
  return fingerprintList(files.map((one) => ({ file: one.file, hash: hashOfRecord(one) })));
}

/** The hash of that list. */
export function fingerprintOf(files: readonly SourceFile[]): string {
  return sha256(fingerprintListOf(files));
}

/** SHA-256 of the text of a record, hexadecimal. */
export function hashOfRecord(file: SourceFile): string {
  const before = known.get(file);
  if (before !== undefined) return before;
  const made = sha256(file.text);
  known.set(file, made);
  return made;
}
