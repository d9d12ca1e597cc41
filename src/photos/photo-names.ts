// Where a photo's two copies go in the binder: named after the original, so that a person finds it again.

/** Longest side of the copies in pixels: the large one fills a sheet of paper, the small one a contents line. */
export const largeSide = 1600;
export const smallSide = 400;

/**
 * Files below the output folder for an original such as `photos/head off.png`, no two originals alike: only a plain `a.jpg`
 * keeps its name, since `a.png` becomes `a.png.jpg`, which may be there as well. The copies are always JPEG.
 */
export function photoNames(original: string): { readonly large: string; readonly small: string } {
  const stroke = original.indexOf('/') + 1;
  const [top, inner] = [original.slice(0, stroke), original.slice(stroke)];
  const name = inner.slice(inner.lastIndexOf('/') + 1);
  const ending = /^[^.]+\.jpe?g$/.test(name) ? '' : /\.[^.]+$/.test(name) ? '.jpg' : '..jpg';
  return { large: `${top}large/${inner}${ending}`, small: `${top}small/${inner}${ending}` };
}
