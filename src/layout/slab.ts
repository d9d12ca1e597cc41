// A slab is what is never parted by the end of a page: a line, a row, a picture with its caption.
import type { PlacedItem } from './placed.ts';

export interface Slab {
  readonly height: number;
  /** White space above; dropped at the head of a page. */
  readonly before?: number;
  /** Stays on one page with the slab that follows. */
  readonly keep?: boolean;
  /** Draws the slab with its upper left corner at (x, y). */
  readonly draw: (x: number, y: number, out: PlacedItem[]) => void;
  /** Drawn as well where the slab does not begin a page: a rule that parts it from what is above. */
  readonly parting?: (x: number, y: number, out: PlacedItem[]) => void;
  /** Repeated above this slab when it begins a page: the head of its table. */
  readonly again?: Slab;
  /** Left out where it would begin a page. */
  readonly spare?: boolean;
  /** Begins a new page, or the back of the leaf. */
  readonly begins?: 'page' | 'back';
  /** Stands at the foot of the page. */
  readonly foot?: boolean;
  /** Set in place of this slab where the page has no room for it: the same in less height. */
  readonly shorter?: Slab;
  /** The first slab of a section: one to be kept whole, or any other. */
  readonly section?: 'whole' | 'other';
}

/** White space alone. */
export function space(height: number): Slab {
  return { height: 0, before: height, draw: () => undefined };
}

/** The same slab with white space above. */
export function spaced(slabs: readonly Slab[], before: number): readonly Slab[] {
  return slabs.map((slab, index) => (index === 0 ? { ...slab, before } : slab));
}

/** The same slabs as they come; `white` gives the white space above the first. */
export function* firstSpaced(slabs: Iterable<Slab>, white: (first: Slab) => number): Generator<Slab> {
  const each = slabs[Symbol.iterator]();
  const first = each.next();
  if (first.done === true) return;
  yield { ...first.value, before: white(first.value) };
  yield* { [Symbol.iterator]: () => each };
}

/** Keeps slabs together, and with what follows if `withNext`. */
export function together(slabs: readonly Slab[], withNext = false): readonly Slab[] {
  return slabs.map((slab, index) => (index < slabs.length - 1 || withNext ? { ...slab, keep: true } : slab));
}
