// What every view of one book shares: the book, our words in its dialect, the owner's words as paragraphs.
import type { Book } from '../book/book.ts';
import type { ViewContext } from '../views/view.ts';
import { speaker } from '../sheet/dialect.ts';
import { prose } from './prose.ts';

/** A context for the machine; add a job, its plan and the options of a view. */
export function contextOf(book: Book): ViewContext {
  return { book, options: {}, say: speaker(book.content.words, book.records.machine.spelling), prose };
}
