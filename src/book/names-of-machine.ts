// What this machine calls a part that the procedures know by another name, told by the fasteners that hold it.
import type { Book, OpenLine } from './book.ts';
import { keptOfBook } from './kept-of-book.ts';
import type { Namer } from './names.ts';

/** The part that a fastener holds in the steps of the procedures, by the fastener: only where a step has one part and one fastener. */
const heldBy = keptOfBook((book): ReadonlyMap<string, string> => {
  const held = new Map<string, string>();
  for (const { steps } of book.content.procedures.values())
    for (const { off, fasteners } of steps) {
      const [part, fastener] = [off[0], fasteners[0]];
      if (part === undefined || fastener === undefined || off.length + fasteners.length > 2) continue;
      if (!held.has(fastener)) held.set(fastener, part);
    }
  return held;
});

/**
 * From the keys of the names under `of` in the maker's data to those of the procedures: the book holds its `top casting` with the nuts
 * that the procedures take off the cylinder head with.
 */
export function usualNames(book: Book, key: Namer): ReadonlyMap<string, readonly string[]> {
  const held = heldBy(book);
  const names = new Map<string, string[]>();
  for (const { id, of } of book.records.maker.fasteners) {
    const part = held.get(id);
    if (of === undefined || part === undefined || key(of) === key(part)) continue;
    names.set(key(of), [...(names.get(key(of)) ?? []), key(part)]);
  }
  return names;
}

/** Keys of the parts that went with an entry's fasteners, where all of a kind that the book counts came off with it. */
export function byItsFasteners(book: Book, { entry }: OpenLine, key: Namer): readonly string[] {
  return entry.fasteners.flatMap(({ id, count }) => {
    const part = heldBy(book).get(id);
    const all = book.fasteners.get(id)?.count;
    return part === undefined || all === undefined || count < all ? [] : [key(part)];
  });
}
