// How much room a text takes, without a font at hand: a generous estimate, so that nothing is set too close.

/** Rectangle already used by a text. */
export interface Taken {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Width in points of a text at a size: six tenths of the size a character is wider than the face sets it. */
export function textRoom(text: string, size: number): number {
  return Array.from(text).length * size * 0.6;
}

/** Whether two rectangles share any area. */
export function overlaps(a: Taken, b: Taken): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
