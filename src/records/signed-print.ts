// The print of a signed record: a few letters over its words, written under `signed` by whoever signs, so that a later change shows.

/** A line of the front matter that goes on with the value begun above it. */
const goesOn = /^[\s-]/u;

/** Front matter of the record without its own `signed` key, which is written last; line ends and spaces at them do not count. */
function withoutSignature(text: string): string {
  const even = evenLines(text);
  const fences = /^---$/gmu;
  const [open, close] = [fences.exec(even)?.index, fences.exec(even)?.index];
  if (open === undefined) return even.trim();
  const front = even.slice(open, close);
  if (!front.includes('\nsigned:')) return even.trim();
  let inside = false;
  const kept = front.split('\n').filter((line) => {
    inside = line.startsWith('signed:') || (inside && goesOn.test(line));
    return !inside;
  });
  return (even.slice(0, open) + kept.join('\n') + (close === undefined ? '' : even.slice(close))).trim();
}

/** Most texts are so as they come, and are not taken apart. */
function evenLines(text: string): string {
  if (!/\r|[^\S\n](?:\n|$)/u.test(text)) return text;
  return text
    .split(/\r\n|\r|\n/u)
    .map((line) => line.trimEnd())
    .join('\n');
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
