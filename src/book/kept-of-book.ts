// What several pages and sheets ask of one book is worked out once: a book is never changed after it is made.
import type { Book } from './book.ts';

/** The same answer for the same book, for as long as the book is held by somebody. */
export function keptOfBook<T extends object>(answer: (book: Book) => T): (book: Book) => T {
  const known = new WeakMap<Book, T>();
  return (book) => {
    const before = known.get(book);
    if (before !== undefined) return before;
    const made = answer(book);
    known.set(book, made);
    return made;
  };
}
