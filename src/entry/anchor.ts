// An id out of words: small letters and digits with hyphens between, short enough to be read.

/** At most forty characters; `part` where no letter or digit is left. */
export function anchorOf(words: string): string {
  const plain = words
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/\p{M}+/gu, '');
  const id = plain.replaceAll(/[^\p{L}\p{N}]+/gu, '-').slice(0, 40);
  return id.replace(/^-+|-+$/gu, '') || 'part';
}
