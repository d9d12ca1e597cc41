// What was read last of a wire or an earth, with its day: the newest reading of the records, or what wiring.yaml says.
import type { Dimension, Written } from '../../quantity/quantity.ts';
import { lastReading } from '../inspection.ts';
import type { ViewContext } from '../view.ts';
import { dayText } from './day.ts';
import { seriesIndex } from './series-index.ts';
import { writtenText } from './value.ts';

/** `0.12 V, 5 May 2024`; nothing where it was never read. What was read off the machine later than the newest reading counts. */
export function lastOfWiring<D extends Dimension>(
  { book }: ViewContext,
  item: string,
  position: string,
  recorded: Written<D> | undefined,
): string {
  const { read } = book.records.wiring ?? {};
  const point = seriesIndex(book).last(item, position);
  const newer = point !== undefined && (recorded === undefined || read === undefined || read <= point.day);
  if (newer) return lastReading(point, []) ?? '';
  if (recorded === undefined) return '';
  return [writtenText(recorded), read === undefined ? '' : dayText(read)].filter((text) => text !== '').join(', ');
}
