// Readings over time: each series as a table of points, struck where corrected, and a plot with the limit in force.
import { printRange } from '../figure/print.ts';
import type { Series, SeriesPoint } from '../book/book.ts';
import type { Block, PlotBlock, Row, Text } from '../sheet/sheet.ts';
import { anchor, column, heading, joined, lines, row, stack } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { inlineFigure } from './wording/figure.ts';
import { jobDate } from './wording/job.ts';
import { instrumentName } from './wording/named.ts';
import { seriesPlot } from './wording/series-plot.ts';
import { capped, olderOnes } from './wording/capped.ts';
import { conditionText, valueText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const measurements = defineView({
  id: 'measurements',
  purpose: 'Every series of readings: its table, its corrections, and a plot with the limit.',
  needs: 'machine',
  options: [],
  long: { page: 'measurements.html', title: 'Measurements' },
  blocks: (context) => {
    const { book, say } = context;
    if (book.series.length === 0) return [lines([say('No reading is recorded.')])];
    return book.series.flatMap((series) => seriesBlocks(context, series));
  },
});

/** The table, the bounds and the plot of one series. */
export function seriesBlocks(context: ViewContext, series: Series): readonly Block[] {
  const plot: PlotBlock | undefined = seriesPlot(context.say, series);
  return stack(heading(2, series.name, anchor(series.item)), bounds(context, series), plot, table(context, series));
}

function bounds({ say }: ViewContext, series: Series): readonly Block[] {
  const standard = series.limit?.standard ?? series.setting?.range;
  const texts: readonly Text[] = [
    ...(standard === undefined ? [] : [`${say('Standard')}: ${printRange(standard)}`]),
    ...(series.limit?.limit === undefined ? [] : [`${say('Limit')}: ${printRange(series.limit.limit)}`]),
    ...series.basis.map((one) => `${say('From')} ${dayText(one.from)}: ${one.what}`),
  ];
  return texts.length === 0 ? [] : [lines(texts)];
}

function table(context: ViewContext, series: Series): Block {
  const { say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Record'), 4),
      column(say('Distance'), 3, 'right'),
      column(say('Position'), 3),
      column(say('As'), 2),
      column(say('Reading'), 3, 'right'),
      column(say('Condition, instrument'), 5),
      column(say('Verdict'), 4),
    ],
    rows: capped(series.points.toReversed(), (rest) => olderOnes(say, rest))
      .map((one) => ('kind' in one ? one : pointRow(context, one)))
      .toReversed(),
    empty: say('No reading is recorded.'),
    use: 'read',
  };
}

function pointRow({ book, say }: ViewContext, point: SeriesPoint): Row {
  const cells = row(
    [jobDate(point.job)],
    point.machineDistance === undefined ? '' : [inlineFigure(point.machineDistance)],
    point.position,
    point.side === 'found' ? say('found') : say('left'),
    valueText(point.value) ?? say('not read'),
    joined([conditionText(point.condition), instrumentName(book, point.instrument)]),
    verdictText(say, point),
  );
  return cells.kind === 'cells' && point.corrected !== undefined ? { ...cells, struck: true } : cells;
}

function verdictText(say: (words: string) => string, point: SeriesPoint): Text {
  if (point.corrected === undefined) return point.verdict === undefined ? '' : say(point.verdict);
  return joined([say('corrected'), [jobDate(point.corrected.by)], point.corrected.why], ', ');
}
