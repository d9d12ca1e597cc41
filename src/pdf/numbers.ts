// Numbers of a page description: at most two decimals, never in powers of ten.

/** A length in points. Not a number is a bug, and stops here rather than in a reader's hands. */
export function points(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  if (!Number.isFinite(rounded)) throw new Error('A place on a page is not a number.');
  return String(rounded === 0 ? 0 : rounded);
}
