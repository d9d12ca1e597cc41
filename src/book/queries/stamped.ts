// Numbers that are almost the same: one wrong character, or two neighbours swapped; the usual slips of a copied number.

/** True when the two differ by exactly one character, or by two neighbours swapped; case and spaces do not count. */
export function oneSlip(a: string, b: string): boolean {
  const left = a.replaceAll(/\s+/gu, '').toUpperCase();
  const right = b.replaceAll(/\s+/gu, '').toUpperCase();
  if (left === right || left.length < 4) return false;
  if (left.length === right.length) return wrongOrSwapped(left, right);
  return Math.abs(left.length - right.length) === 1 && oneMissing(left, right);
}

function wrongOrSwapped(left: string, right: string): boolean {
  const odd = Array.from(left).flatMap((character, index) => (character === right[index] ? [] : [index]));
  const [first = 0, second = 0] = odd;
  if (odd.length === 1) return true;
  return odd.length === 2 && second === first + 1 && left[first] === right[second] && left[second] === right[first];
}

function oneMissing(left: string, right: string): boolean {
  const [short, long] = left.length < right.length ? [left, right] : [right, left];
  const at = Array.from(short).findIndex((character, index) => character !== long[index]);
  const cut = at === -1 ? short.length : at;
  return short === long.slice(0, cut) + long.slice(cut + 1);
}
