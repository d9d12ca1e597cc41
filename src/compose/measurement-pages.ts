// Readings over time on the screen: one page while they are few, else a list of the series and a page for each.
import type { Series } from '../book/book.ts';
import type { Block } from '../sheet/sheet.ts';
import { seriesBlocks } from '../views/measurements.ts';
import { viewNamed } from '../views/list.ts';
import type { ViewContext } from '../views/view.ts';
import { anchor, column, row } from '../views/wording/blocks.ts';
import { count } from '../views/wording/count.ts';
import { dayText } from '../views/wording/day.ts';
import { valueText } from '../views/wording/value.ts';
import type { PageSpec } from './pages.ts';

/** So many readings fit on one page. */
const few = 400;

/** Pages of the readings; the first is `measurements.html`. */
export function measurementPages(context: ViewContext): readonly PageSpec[] {
  const { book, say } = context;
  const section = say('Measurements');
  const first = { file: 'measurements.html', title: section, section };
  const readings = book.series.reduce((sum, series) => sum + series.points.length, 0);
  if (readings <= few) {
    return [{ ...first, make: () => ({ ...first, blocks: viewNamed('measurements')?.blocks(context) ?? [] }) }];
  }
  const each = book.series.map((series): PageSpec => {
    const page = { file: fileOf(series), title: series.name, section };
    return { ...page, make: () => ({ ...page, blocks: seriesBlocks(context, series) }) };
  });
  return [{ ...first, make: () => ({ ...first, blocks: [listOf(context)] }) }, ...each];
}

function fileOf(series: Series): string {
  return `measurements/${anchor(series.item)}.html`;
}

function listOf({ book, say }: ViewContext): Block {
  return {
    type: 'table',
    columns: [
      column(say('Item'), 6),
      column(say('Readings'), 2, 'right'),
      column(say('Last'), 3, 'right'),
      column(say('On'), 3),
      column(say('Verdict'), 4),
    ],
    rows: book.series.map((series) => {
      const last = series.points.at(-1);
      return row(
        [{ kind: 'link', text: series.name, to: `page:${fileOf(series)}` }],
        count(series.points.length),
        valueText(last?.value) ?? '',
        last === undefined ? '' : dayText(last.day),
        last?.verdict === undefined ? '' : say(last.verdict),
      );
    }),
    empty: say('No reading is recorded.'),
    use: 'read',
  };
}
