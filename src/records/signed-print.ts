// The print of a signed record: a few letters over its words, written under `signed` by whoever signs, so that a later change shows.

/** Front matter of the record without its own `signed` key, which is written last; line ends and spaces at them do not count. */
function withoutSignature(text: string): string {
  const even = evenLines(text);
  const fences = /^---$/gmu;
  const [open, close = even.length] = [fences.exec(even)?.index, fences.exec(even)?.index];
  if (open === undefined) return even.trim();
  let [kept, from] = ['', 0];
  for (let at = even.indexOf(signature, open); at >= 0 && at < close; at = even.indexOf(signature, from)) {
    kept += even.slice(from, at);
    from = endOfValue(even, at + 1, close);
  }
  return (kept + even.slice(from)).trim();
}

const signature = '\nsigned:';

/** Where the value begun on a line ends: before the first line that is not further in and no item of a list. */
function endOfValue(text: string, begin: number, close: number): number {
  let end = text.indexOf('\n', begin);
  while (end >= 0 && end + 1 < close && /[^\S\n]|-/u.test(text.charAt(end + 1))) end = text.indexOf('\n', end + 1);
  return end < 0 ? text.length : end;
}

/** Most texts are so as they come, and are not taken apart. */
function evenLines(text: string): string {
  if (isEven(text)) return text;
  return text
    .split(/\r\n|\r|\n/u)
    .map((line) => line.trimEnd())
    .join('\n');
}

/** Surely without spaces at the ends of its lines, the last one apart; only their last signs are looked at. */
function isEven(text: string): boolean {
  if (text.includes('\r')) return false;
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
    const last = at === 0 ? newLine : text.charCodeAt(at - 1);
    if ((last <= space && last !== newLine) || last === noBreakSpace || last >= firstRareSpace) return false;
  }
  return true;
}

const newLine = 0x0a;
const space = 0x20;
const noBreakSpace = 0xa0;
/** No sign of the languages written here is above it, but quotes and dashes; these are taken apart. */
const firstRareSpace = 0x1680;

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

/** Tells two texts of one record apart, two letters at a time, since all of every record is gone through; nobody copies it by hand. */
export function versionOf(text: string): string {
  let state = text.length;
  for (let index = 0; index < text.length; index += 2) {
    // Beyond the end there is no letter, and nothing is added.
    const two = text.charCodeAt(index) ^ (text.charCodeAt(index + 1) << 16);
    state = Math.imul(((state << 13) | (state >>> 19)) ^ two, 0x85ebca6b);
  }
  return ((state ^ (state >>> 15)) >>> 0).toString(36);
}
