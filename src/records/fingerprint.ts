// The fingerprint of records: one hash over the list of their hashes, in the order of their names; anybody with sha256sum can make it again.

/** A record and the SHA-256 of its bytes, hexadecimal, in small letters. */
export interface HashedRecord {
  readonly file: string;
  readonly hash: string;
}

/** The list, as sha256sum writes and checks it in the machine folder. The hash of this text is the fingerprint. */
export function fingerprintList(records: readonly HashedRecord[]): string {
  const sorted = records.toSorted((a, b) => (a.file < b.file ? -1 : 1));
  return sorted.map(({ file, hash }) => `${hash}  ${file}\n`).join('');
}

/** A fingerprint in groups of eight, to be compared by eye. */
export function fingerprintText(hash: string): string {
  return (hash.match(/.{1,8}/gu) ?? []).join(' ');
}
