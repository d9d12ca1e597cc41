// A sheet whose last page is nearly empty is set with less white between its parts, if that saves the page.
import type { Block } from '../sheet/sheet.ts';
import type { PlacedItem, PlacedPage } from './placed.ts';
import type { Slab } from './slab.ts';

/** Longer sheets are set as they come: a page more or less is nothing to them, and their slabs are never held. */
const mostSlabs = 600;
const mostPages = 16;

/** Less of the last page than this is worth saving. */
const scarce = 0.34;

/** Shares of the white that are tried, the most first. */
const shares = [0.75, 0.5, 0.35, 0.2] as const;

/**
 * Whether a sheet is surely longer than is tried: a block gives a slab or more, and a table one for each row. Where that is known
 * beforehand no slab need be held; once many were, the engine takes all that are like them for things that stay.
 */
export function isSurelyLong(blocks: readonly Block[]): boolean {
  let least = 0;
  for (const block of blocks) {
    least += block.type === 'table' ? block.rows.length : 1;
    if (least >= mostSlabs) return true;
  }
  return false;
}

/** Pages of the slabs; `set` puts slabs on pages. */
export function* fewestPages(
  slabs: Iterable<Slab>,
  set: (slabs: Iterable<Slab>) => Iterable<PlacedPage>,
): Generator<PlacedPage> {
  const rest = slabs[Symbol.iterator]();
  const held: Slab[] = [];
  for (let next = rest.next(); next.done !== true; next = rest.next()) {
    held.push(next.value);
    if (held.length < mostSlabs) continue;
    yield* set(joined(held, rest));
    return;
  }
  const pages = [...set(held)];
  if (pages.length < 2 || pages.length > mostPages || !isScarce(pages.at(-1))) {
    yield* pages;
    return;
  }
  const undrawn = held.map(withoutDrawing);
  const share = shares.find((one) => [...set(undrawn.map((slab) => withLess(slab, one)))].length < pages.length);
  yield* share === undefined ? pages : set(held.map((slab) => withLess(slab, share)));
}

/** As high as the slab, and nothing in it: how many pages there are follows from the heights alone, and most tries save none. */
function withoutDrawing({ parting, again, shorter, ...slab }: Slab): Slab {
  return {
    ...slab,
    draw: nothing,
    ...(parting === undefined ? {} : { parting: nothing }),
    ...(again === undefined ? {} : { again: withoutDrawing(again) }),
    ...(shorter === undefined ? {} : { shorter: withoutDrawing(shorter) }),
  };
}

function nothing(): void {
  // A try draws nothing.
}

function* joined(held: readonly Slab[], rest: Iterator<Slab>): Generator<Slab> {
  yield* held;
  for (let next = rest.next(); next.done !== true; next = rest.next()) yield next.value;
}

function withLess(slab: Slab, share: number): Slab {
  return slab.before === undefined ? slab : { ...slab, before: slab.before * share };
}

/** What stands on a page by itself ends this high; the foot of a sheet, which always stands low, is not counted. */
function isScarce(page: PlacedPage | undefined): boolean {
  if (page === undefined) return false;
  const { y, height } = page.frame;
  const lows = page.items.map(lowest).filter((low) => low > y);
  const most = y + height * (1 - footShare);
  const used = lows.filter((low) => low <= most).reduce((low, one) => Math.max(low, one), y);
  return (used - y) / height < scarce;
}

/** The foot takes at most this share of a page. */
const footShare = 0.16;

function lowest(item: PlacedItem): number {
  if (item.kind === 'line') return Math.max(item.y1, item.y2);
  if (item.kind === 'empty') return 0;
  return 'height' in item ? item.y + item.height : item.y;
}
