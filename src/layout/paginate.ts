// Slabs put on pages, one page at a time: what must stay together does, and no more than one page is ever held.
import type { Leaf } from './paper.ts';
import type { Frame, PlacedItem, PlacedPage } from './placed.ts';
import type { RunningHead } from './running-head.ts';
import { half } from './scale.ts';
import type { Slab } from './slab.ts';

/** More slabs than this are not kept together: they would not fit on a page anyhow. */
const longestGroup = 60;

interface Leaves {
  readonly front: Leaf;
  readonly back: Leaf;
  /** What an even page is by itself: the back of its leaf where both sides are printed, or a leaf of its own. */
  readonly after: Leaf;
}
interface Open {
  readonly number: number;
  readonly leaf: Leaf;
  readonly frame: Frame;
  readonly items: PlacedItem[];
  y: number;
  empty: boolean;
}

/** Places slabs in their order. Every page has the running head. */
export function* paginate(slabs: Iterable<Slab>, leaves: Leaves, head: RunningHead): Generator<PlacedPage> {
  let page = begin(1, leaves, head);
  let group: Slab[] = [];
  for (const slab of slabs) {
    if (slab.begins !== undefined) {
      for (const done of placeGroup(group, page, leaves, head)) {
        yield finished(done.closed);
        page = done.open;
      }
      group = [];
      const next = turned(page, slab.begins, leaves, head);
      if (next === undefined) continue;
      yield finished(page);
      page = next;
      continue;
    }
    group.push(slab);
    if (slab.keep === true && group.length < longestGroup) continue;
    for (const done of placeGroup(group, page, leaves, head)) {
      yield finished(done.closed);
      page = done.open;
    }
    group = [];
  }
  for (const done of placeGroup(group, page, leaves, head)) {
    yield finished(done.closed);
    page = done.open;
  }
  yield finished(page);
}

function begin(number: number, leaves: Leaves, head: RunningHead, asked?: Leaf): Open {
  const leaf = asked ?? (number % 2 === 0 ? leaves.after : leaves.front);
  const { x, y, width, height } = leaf.area;
  const frame = { x, y: y + head.height, width, height: height - head.height };
  const items: PlacedItem[] = [];
  head.draw(number, x, y, items);
  return { number, leaf, frame, items, y: frame.y, empty: true };
}

function finished(page: Open): PlacedPage {
  return {
    number: page.number,
    width: page.leaf.width,
    height: page.leaf.height,
    frame: page.frame,
    items: page.items,
  };
}

/** The page that follows when a new one or the back of a leaf is asked for; none where the page is still empty. A back that is taken already begins a leaf. */
function turned(page: Open, to: 'page' | 'back', leaves: Leaves, head: RunningHead): Open | undefined {
  if (page.empty) return undefined;
  const isBack = to === 'back' && page.number % 2 === 1;
  return begin(page.number + 1, leaves, head, isBack ? leaves.back : undefined);
}

interface Turn {
  readonly closed: Open;
  readonly open: Open;
}

/** Places slabs that belong together; gives every page that was closed on the way. */
function* placeGroup(asked: readonly Slab[], start: Open, leaves: Leaves, head: RunningHead): Generator<Turn> {
  let page = start;
  const group = shortened(asked, page);
  const fits = page.y + groupHeight(group, page, false) <= bottom(page) + 0.01;
  if (
    !page.empty &&
    !fits &&
    group.some((slab) => slab.spare !== true) &&
    groupHeight(group, page, true) <= page.frame.height
  ) {
    const open = begin(page.number + 1, leaves, head);
    yield { closed: page, open };
    page = open;
  }
  for (const slab of group) {
    const full = !page.empty && page.y + before(slab, page) + slab.height > bottom(page) + 0.01;
    if (slab.spare === true && (full || page.empty)) continue;
    if (full) {
      const open = begin(page.number + 1, leaves, head);
      yield { closed: page, open };
      page = open;
    }
    place(slab, page);
  }
}

/** The group with the longest form of its last slab for which the page has room; as it was where none fits. */
function shortened(group: readonly Slab[], page: Open): readonly Slab[] {
  const last = group.at(-1);
  if (last?.shorter === undefined) return group;
  for (let form: Slab | undefined = last; form !== undefined; form = form.shorter) {
    const tried = [...group.slice(0, -1), form];
    if (page.y + groupHeight(tried, page, false) <= bottom(page) + 0.01) return tried;
  }
  return group;
}

function bottom(page: Open): number {
  return page.frame.y + page.frame.height;
}

/** Height of a group that begins at the place where the page stands, or at the head of a fresh page. */
function groupHeight(group: readonly Slab[], page: Open, fresh: boolean): number {
  const start = fresh ? page.frame.y : page.y;
  let y = fresh ? start + (group[0]?.again?.height ?? 0) : start;
  let empty = fresh || page.empty;
  for (const slab of group) {
    y += above(slab, y - page.frame.y, empty) + slab.height;
    empty = empty && slab.height === 0;
  }
  return y - start;
}

/** White space above a slab: none at the head of a page; blocks begin on the half grid. */
function above(slab: Slab, y: number, empty: boolean): number {
  const white = slab.before ?? 0;
  if (white === 0 || empty) return 0;
  return Math.ceil((y + white) / half - 0.01) * half - y;
}

function before(slab: Slab, page: Open): number {
  return above(slab, page.y - page.frame.y, page.empty);
}

function place(slab: Slab, page: Open): void {
  if (page.empty && slab.again !== undefined) {
    slab.again.draw(page.frame.x, page.y, page.items);
    page.y += slab.again.height;
  }
  const y = slab.foot === true ? bottom(page) - slab.height : page.y + before(slab, page);
  if (!page.empty) slab.parting?.(page.frame.x, y, page.items);
  slab.draw(page.frame.x, y, page.items);
  page.y = y + slab.height;
  if (slab.height > 0) page.empty = false;
}
