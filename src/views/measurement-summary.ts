// All series at a glance: the last reading nearest its limit, when it was taken, standard, limit, how far it is, verdict.
import type { Book, Series, SeriesPoint } from '../book/book.ts';
import { printRange } from '../figure/print.ts';
import type { Row, TableBlock, Text } from '../sheet/sheet.ts';
import { column, joined, row } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { jobDate } from './wording/job.ts';
import { nearestToLimit, roomText } from './wording/to-limit.ts';
import { valueText } from './wording/value.ts';
import { verdictsText } from './wording/verdicts.ts';
import type { ViewContext } from './view.ts';

/** One row a series; `leadOf` gives where its name leads to. */
export function summaryTable({ book, say }: ViewContext, leadOf: (series: Series) => Text): TableBlock {
  return {
    type: 'table',
    columns: [
      column(say('Item'), 5),
      column(say('Last reading'), 4),
      column(say('On'), 3),
      column(say('Standard'), 3),
      column(say('Limit'), 3),
      column(say('To the limit, verdict'), 5),
    ],
    rows: book.series.map((series) => summaryRow(book, say, series, leadOf(series))),
    empty: say('No reading is recorded.'),
    use: 'card',
  };
}

/** The readings of the newest record that were not corrected: as left, where anything was left. */
export function lastPoints(series: Series): readonly SeriesPoint[] {
  const good = series.points.filter((point) => point.corrected === undefined);
  const newest = good.at(-1);
  return newest === undefined ? [] : good.filter((point) => point.job === newest.job && point.side === newest.side);
}

function summaryRow(book: Book, say: (words: string) => string, series: Series, name: Text): Row {
  const last = lastPoints(series);
  const nearest = nearestToLimit(series, last);
  if (nearest === undefined) return row(name, '', '', '', '', '');
  const { point } = nearest;
  const { limit, setting } = series;
  const standard = limit?.standard === undefined ? valueText(setting?.value) : printRange(limit.standard);
  const bound = limit?.limit ?? setting?.range;
  return row(
    name,
    joined([valueText(point.value) ?? say('not read'), last.length > 1 ? point.position : undefined], ', '),
    [jobDate(point.job)],
    standard ?? '',
    bound === undefined ? '' : printRange(bound),
    otherBoundsSince(book, say, series, point) ??
      joined([roomText(say, series, nearest), verdictsText(say, [point])], ': '),
  );
}

/** A repair after the reading gave the thing other bounds: by those in force now the old reading would be judged falsely. */
function otherBoundsSince(
  { records }: Book,
  say: (words: string) => string,
  { basis }: Series,
  point: SeriesPoint,
): string | undefined {
  const since = basis.findLast((one) => one.from > point.day);
  const repairs = records.jobs.flatMap((job) => job.repairs).filter(({ now }) => now === since?.what);
  if (since === undefined || !repairs.some(({ standard, limit }) => standard !== undefined || limit !== undefined))
    return undefined;
  return `${say('not read since')} ${dayText(since.from)}: ${since.what}`;
}
