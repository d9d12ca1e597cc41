// The name behind an id: of a limit, a setting, a fastener, a fluid; a free name stands as it was written.
import type { Book } from '../../book/book.ts';

/** What an item is called on paper. */
export function itemName(book: Book, item: string): string {
  const known = book.limits.get(item) ?? book.settings.get(item) ?? book.fasteners.get(item);
  if (known !== undefined) return known.name;
  return book.records.maker.fluids.find((fluid) => fluid.id === item)?.name ?? plain(item);
}

/** `gearbox-oil` as `gearbox oil`; a text that is no id stays as it is. */
export function plain(item: string): string {
  return /^[a-z0-9]+(-[a-z0-9]+)+$/.test(item) ? item.replaceAll('-', ' ') : item;
}

/** What an instrument is called. */
export function instrumentName(book: Book, id: string | undefined): string | undefined {
  if (id === undefined) return undefined;
  return book.records.instruments.find((one) => one.id === id)?.name ?? plain(id);
}
