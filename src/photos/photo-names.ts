// Where a photo's two copies go in the binder: named after the original, so that a person finds it again.

/** Longest side of the copies in pixels: the large one fills a sheet of paper, the small one a contents line. */
export const largeSide = 1600;
export const smallSide = 400;

/** Files below the output folder for an original such as `photos/head off.png`. The copies are always JPEG. */
export function photoNames(original: string): { readonly large: string; readonly small: string } {
  const inner = original.replace(/^photos\//, '');
  const name = /\.jpe?g$/.test(inner) ? inner : `${inner}.jpg`;
  return { large: `photos/large/${name}`, small: `photos/small/${name}` };
}
