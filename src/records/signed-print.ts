// The print of a signed record: a few letters over its words, written under `signed` by whoever signs, so that a later change shows.

/** Front matter of the record without its own `signed` key, which is written last; line ends and spaces at them do not count. */
function withoutSignature(text: string): string {
  const kept: string[] = [];
  let inside = false;
  let fences = 0;
  for (const line of text.split(/\r\n|\r|\n/u)) {
    const bare = line.trimEnd();
    if (bare === '---') fences += 1;
    if (fences === 1 && bare.startsWith('signed:')) inside = true;
    else if (inside && !/^[\s-]/u.test(bare)) inside = false;
    if (bare === '---') inside = false;
    if (!inside) kept.push(bare);
  }
  return kept.join('\n').trim();
}

/** Seven letters and digits over some words: tells two texts apart, and is short enough to be copied by hand. */
export function printOf(words: string): string {
  let [a, b] = [0x9e3779b9, 0x85ebca6b];
  for (let index = 0; index < words.length; index += 1) {
    const code = words.charCodeAt(index);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0xc2b2ae35) ^ (b >>> 13);
  }
  const mixed = Math.imul(a ^ (a >>> 15) ^ b, 0x7feb352d) ^ words.length;
  return (mixed >>> 0).toString(36).padStart(7, '0');
}

/**
 * The print of a record as its words stand in its file. Not a secret and not a proof against somebody who wants to deceive: it
 * tells a mechanic that a signed record is not what was signed.
 */
export function signedPrint(text: string): string {
  return printOf(withoutSignature(text));
}
