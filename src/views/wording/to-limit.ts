// How far a reading stands from the bound that it will meet first.
import type { Series, SeriesPoint } from '../../book/book.ts';
import { printQuantity } from '../../figure/print.ts';
import { inUnit, ofSi } from '../../quantity/quantity.ts';
import type { Written, WrittenRange } from '../../quantity/quantity.ts';

interface Nearest {
  readonly point: SeriesPoint;
  /** In SI; negative when the bound is passed; not there when nothing bounds it. */
  readonly room?: number;
}

/** What bounds a series: its service limit, else the range of its setting. */
export function boundOf(series: Series): WrittenRange | undefined {
  return series.limit?.limit ?? series.setting?.range;
}

/** Of the readings given, the one with the least room to the bound; the newest where nothing bounds them. */
export function nearestToLimit(series: Series, points: readonly SeriesPoint[]): Nearest | undefined {
  const bound = boundOf(series);
  const all = points.map((point): Nearest => {
    if (point.verdict === 'limit is for another condition') return { point };
    const room = point.value.kind === 'read' ? roomOf(point.value.written, bound) : undefined;
    return room === undefined ? { point } : { point, room };
  });
  const bounded = all.filter((one) => one.room !== undefined);
  if (bounded.length === 0) return all.at(-1);
  return bounded.reduce((least, one) => ((one.room ?? 0) < (least.room ?? 0) ? one : least));
}

function roomOf(value: Written, bound: WrittenRange | undefined): number | undefined {
  if (bound === undefined || bound.unit.dimension !== value.unit.dimension || bound.unit.inverse === true)
    return undefined;
  const rooms = [
    ...(bound.high === undefined ? [] : [bound.high - value.quantity]),
    ...(bound.low === undefined ? [] : [value.quantity - bound.low]),
  ];
  return rooms.length === 0 ? undefined : Math.min(...rooms);
}

/** `0.09 mm`, `0.05 mm past`, or that it is at the limit; empty where nothing bounds the reading. */
export function roomText(say: (words: string) => string, series: Series, nearest: Nearest): string {
  const bound = boundOf(series);
  const { value } = nearest.point;
  if (nearest.room === undefined || bound === undefined || value.kind !== 'read') return '';
  const { unit } = bound;
  // A temperature or a pressure counted from another zero has a difference of its own; only plain scales are told.
  if (unit.offset !== undefined) return '';
  const decimals = Math.max(bound.decimals, value.written.decimals);
  const room = ofSi(Math.abs(nearest.room));
  if (inUnit(room, unit) < 0.5 * 10 ** -decimals) return say('at the limit');
  const size = printQuantity(room, unit, decimals);
  return nearest.room < 0 ? `${size} ${say('past')}` : size;
}
