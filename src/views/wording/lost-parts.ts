// What was lost and not replaced since has to be got: it stands among the parts to get, with its size.
import type { Book } from '../../book/book.ts';
import { fastenerNamed } from './fastener.ts';

type Line = Book['parts'][number];

/** One line for each thing that is lost on the records and that no part is wanted for under its name. */
export function lostParts(book: Book): readonly Line[] {
  return book.off.open
    .filter(({ entry }) => entry.verb === 'lost')
    .map(({ entry, job, remaining }): Line => {
      const { name, size } = fastenerNamed(book, entry.thing);
      const known = book.fasteners.has(entry.thing);
      const from = entry.fromBag === undefined ? 'lost' : `lost with bag ${entry.fromBag}`;
      const part = {
        part: known && size !== '' ? `${name}, ${size}` : entry.thing,
        count: remaining ?? entry.count ?? 1,
        state: 'wanted' as const,
        note: from,
        at: entry.at,
      };
      return { job, part };
    });
}
