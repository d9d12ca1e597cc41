// Fasteners as they lie in the hand: how many, which thread, how long.
import type { Book } from '../../book/book.ts';
import type { Fastener } from '../../records/model.ts';
import { times } from './count.ts';
import { writtenText } from './value.ts';

/** `8 × M8×1.25 × 30 mm`; of mixed lengths `5 × 30 mm, 4 × 45 mm, M6×1.0`; as much as is known. */
export function fastenerSize(fastener: Fastener): string {
  const thread = threadText(fastener.thread ?? '');
  if (fastener.lengths.length > 0) {
    const each = fastener.lengths.map((one) => `${times(one.count)}\u00a0${writtenText(one.length)}`);
    return [thread, each.join(', ')].filter((text) => text !== '').join(': ');
  }
  const size = [thread, fastener.length === undefined ? '' : writtenText(fastener.length)];
  const text = size.filter((piece) => piece !== '').join(' × ');
  if (fastener.count === undefined) return text;
  return text === '' ? times(fastener.count) : `${times(fastener.count)}\u00a0${text}`;
}

/** `M8x1.25` as it is set in books: `M8×1.25`; `5/16 x 26 Cycle` as `5/16 × 26 Cycle`. */
export function threadText(thread: string): string {
  return thread.replace(/(?<=\d)( ?)x( ?)(?=\d)/, '$1×$2');
}

/** Name and size of a fastener by its id; the id in plain words when the maker's data does not know it. */
export function fastenerNamed(book: Book, id: string): { readonly name: string; readonly size: string } {
  const known = book.fasteners.get(id);
  if (known === undefined) return { name: id.replaceAll('-', ' '), size: '' };
  return { name: known.name, size: fastenerSize(known) };
}
