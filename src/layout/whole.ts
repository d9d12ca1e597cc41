// Sections kept whole: what stands under a heading that asks for it stays on one page, where it takes less than two fifths of one.
import type { Slab } from './slab.ts';

/** Of a page: a taller section would leave too much of the page before it white. */
const share = 0.4;

/** Longer sections are not held back. */
const most = 50;

/** The same slabs; those of a short section that asks for it are kept together. `height` is that of a page. */
export function* sectionsWhole(slabs: Iterable<Slab>, height: number): Generator<Slab> {
  let held: Slab[] = [];
  let holding = false;
  for (const slab of slabs) {
    const ends = slab.section !== undefined || slab.begins !== undefined || held.length >= most;
    if (ends) {
      yield* released(held, height);
      held = [];
      holding = slab.section === 'whole';
    }
    if (holding) held.push(slab);
    else yield slab;
  }
  yield* released(held, height);
}

function released(held: readonly Slab[], height: number): readonly Slab[] {
  const tall = held.reduce((sum, slab) => sum + slab.height + (slab.before ?? 0), 0);
  if (held.length >= most || tall > height * share) return held;
  return held.map((slab, index) => (index < held.length - 1 ? { ...slab, keep: true } : slab));
}
