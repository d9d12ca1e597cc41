// Readings over time: all at a glance, then each series as a grid of dates and positions with a plot and the limit in force.
import { printRange } from '../figure/print.ts';
import type { Series } from '../book/book.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { summaryTable } from './measurement-summary.ts';
import { occasions, seriesGrid, sharedWords } from './series-grid.ts';
import { anchor, column, heading, joined, lines, row, stack } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { jobDate } from './wording/job.ts';
import { seriesLines } from './wording/series-lines.ts';
import { seriesPlot } from './wording/series-plot.ts';
import { valueText } from './wording/value.ts';
import { verdictsText } from './wording/verdicts.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const measurements = defineView({
  id: 'measurements',
  purpose: 'The last readings at a glance; then every series: its grid, its corrections, and a plot with the limit.',
  needs: 'machine',
  options: [],
  long: { page: 'measurements.html', title: 'Measurements' },
  blocks: (context) => {
    const { book, say } = context;
    if (book.series.length === 0) return [lines([say('No reading is recorded.')])];
    const once = book.series.filter(isOnce);
    const often = book.series.filter((series) => !isOnce(series));
    return stack(
      heading(2, say('The last readings'), 'last-readings'),
      summaryTable(context, (series) => leadTo(series)),
      often.map((series) => seriesBlocks(context, series)).flat(),
      once.length === 0 ? undefined : [heading(2, say('Read once'), 'read-once'), onceTable(context, once)],
    );
  },
});

function leadTo(series: Series): Text {
  const place = isOnce(series) ? 'read-once' : anchor(series.item);
  return [{ kind: 'link', text: series.name, to: `page:measurements.html#${place}` }];
}

/** A series of one reading needs no grid of its own. */
function isOnce(series: Series): boolean {
  return series.points.length === 1;
}

/** The grid, the bounds and the plot of one series. */
export function seriesBlocks(context: ViewContext, series: Series): readonly Block[] {
  return stack(
    heading(2, series.name, anchor(series.item)),
    bounds(context, series),
    seriesGrid(context, series),
    seriesPlot(context.say, series),
    follows(context, series),
  );
}

/** What follows from the readings: wear to the limit, the chain by both rules, the charge of a battery. */
function follows(context: ViewContext, series: Series): readonly Block[] {
  const texts = seriesLines(context, series);
  return texts.length === 0 ? [] : [lines(texts)];
}

function bounds(context: ViewContext, series: Series): readonly Block[] {
  const { say } = context;
  const standard = series.limit?.standard ?? series.setting?.range;
  const inForce = joined([
    standard === undefined ? undefined : `${say('Standard')} ${printRange(standard)}`,
    series.limit?.limit === undefined ? undefined : `${say('limit')} ${printRange(series.limit.limit)}`,
    sharedWords(context, series),
  ]);
  const texts: readonly Text[] = [
    inForce,
    ...series.basis.map((one) => `${say('From')} ${dayText(one.from)}: ${one.what}`),
  ].filter((text) => text.length > 0);
  return texts.length === 0 ? [] : [lines(texts)];
}

function onceTable(context: ViewContext, once: readonly Series[]): Block {
  const { say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Item'), 5),
      column(say('Reading'), 4),
      column(say('On'), 3),
      column(say('Condition, instrument'), 4),
      column(say('Verdict'), 3),
    ],
    rows: once.flatMap((series) => onceRows(context, series)),
    empty: '',
    use: 'read',
  };
}

function onceRows(context: ViewContext, series: Series): readonly Row[] {
  const { say } = context;
  return occasions(context, series).flatMap(({ points, how }) =>
    points.map((point) =>
      row(
        series.name,
        joined([valueText(point.value) ?? say('not read'), point.position], ', '),
        [jobDate(point.job)],
        how,
        verdictsText(say, [point]),
      ),
    ),
  );
}
