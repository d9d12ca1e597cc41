// Readings over time: all at a glance, then each series as a grid of dates and positions with a plot and the limit in force.
import { printRange } from '../figure/print.ts';
import type { Series } from '../book/book.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { lastPoints, summaryTable } from './measurement-summary.ts';
import { occasions, seriesGrid, sharedWords } from './series-grid.ts';
import { anchor, column, heading, joined, lines, row, sentence, stack } from './wording/blocks.ts';
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
    const [once, often] = onceAndOften(context);
    return stack(
      heading(2, say('The last readings'), 'last-readings'),
      summaryTable(context, (series) => leadTo(context, series)),
      often.map((series) => seriesBlocks(context, series)).flat(),
      readOnce(context, once),
    );
  },
});

/** The series that were read on one occasion only and have more to be told, and those that have a grid of their own. */
export function onceAndOften(context: ViewContext): readonly [readonly Series[], readonly Series[]] {
  const { series } = context.book;
  return [
    series.filter((one) => isOnce(context, one) && !isToldWhole(context, one)),
    series.filter((one) => !isOnce(context, one)),
  ];
}

/** One value with no word to it: its line among the last readings says all of it. */
export function isToldWhole(context: ViewContext, series: Series): boolean {
  const [occasion] = isOnce(context, series) ? occasions(context, series) : [];
  return occasion?.how === '' && lastPoints(series).length === 1 && series.points.length === 1;
}

/** What was read once, a row each, under its heading; nothing where there is none. */
export function readOnce(context: ViewContext, once: readonly Series[]): readonly Block[] {
  if (once.length === 0) return [];
  return [heading(2, context.say('Read once'), 'read-once'), onceTable(context, once)];
}

function leadTo(context: ViewContext, series: Series): Text {
  if (isToldWhole(context, series)) return sentence(series.name);
  const place = isOnce(context, series) ? 'read-once' : anchor(series.item);
  return [{ kind: 'link', text: sentence(series.name), to: `page:measurements.html#${place}` }];
}

/** So many positions stand in one line. */
const mostInLine = 4;

/** What was read on one occasion only, at few positions, and is followed by nothing, needs no grid of its own. */
function isOnce(context: ViewContext, series: Series): boolean {
  const { points, basis } = series;
  if (points.length > mostInLine || basis.length > 0) return false;
  return occasions(context, series).length === 1 && seriesLines(context, series).length === 0;
}

/** The bounds, the plot and what follows from it, then the readings of one series; of more occasions than `shown` the newest. */
export function seriesBlocks(context: ViewContext, series: Series, shown?: number): readonly Block[] {
  return stack(
    heading(2, sentence(series.name), anchor(series.item)),
    bounds(context, series),
    seriesPlot(context.say, series),
    follows(context, series),
    seriesGrid(context, series, shown),
  );
}

/** What follows from the readings: wear to the limit, the chain by both rules, the charge of a battery. */
function follows(context: ViewContext, series: Series): readonly Block[] {
  const texts = seriesLines(context, series);
  return texts.length === 0 ? [] : [lines(texts)];
}

function bounds(context: ViewContext, series: Series): readonly Block[] {
  const { say } = context;
  const { limit, setting } = series;
  const set = setting?.value.kind === 'read' ? valueText(setting.value) : undefined;
  const inForce = joined([
    limit?.standard === undefined ? undefined : `${say('Standard')} ${printRange(limit.standard)}`,
    limit?.limit === undefined ? undefined : `${say('limit')} ${printRange(limit.limit)}`,
    // What is set has no standard of a new part.
    set === undefined ? undefined : `${say('By the book')} ${set}`,
    setting?.range === undefined ? undefined : `${say('range')} ${printRange(setting.range)}`,
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
  return occasions(context, series).map(({ points, how }) => {
    const values = points.map((point) => {
      const value = valueText(point.value) ?? say('not read');
      return point.position === '' ? value : `${point.position} ${value}`;
    });
    const [first] = points;
    const day: Text = first === undefined ? '' : [jobDate(first.job)];
    return row(sentence(series.name), values.join(', '), day, how, verdictsText(say, points));
  });
}
