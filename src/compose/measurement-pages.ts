// Readings over time on the screen: one page while they are few, else all at a glance and a page for each series.
import type { Series } from '../book/book.ts';
import type { Block } from '../sheet/sheet.ts';
import { summaryTable } from '../views/measurement-summary.ts';
import { isToldWhole, onceAndOften, readOnce, seriesBlocks } from '../views/measurements.ts';
import { viewNamed } from '../views/list.ts';
import type { ViewContext } from '../views/view.ts';
import { anchor, heading, sentence } from '../views/wording/blocks.ts';
import { turning } from './turning.ts';
import type { PageSpec } from './pages.ts';

/** So many readings are read on one page. */
const few = 40;
/** So many occasions are shown of one series; its plot has all of them. */
const shown = 90;

/** Pages of the readings; the first is `measurements.html`. */
export function measurementPages(context: ViewContext): readonly PageSpec[] {
  const { book, say } = context;
  const section = say('Measurements');
  const first = { file: 'measurements.html', title: section, section };
  const readings = book.series.reduce((sum, series) => sum + series.points.length, 0);
  if (readings <= few) {
    return [{ ...first, make: () => ({ ...first, blocks: viewNamed('measurements')?.blocks(context) ?? [] }) }];
  }
  const [, often] = onceAndOften(context);
  const beside = turning(often.map(nameOf));
  const each = often.map((series, index): PageSpec => {
    const page = { ...nameOf(series), section };
    return {
      ...page,
      make: () => ({ ...page, blocks: seriesBlocks(context, series, shown), ...beside(index) }),
    };
  });
  return [{ ...first, make: () => ({ ...first, blocks: atAGlance(context) }) }, ...each];
}

function nameOf(series: Series): { readonly file: string; readonly title: string } {
  return { file: seriesFile(series), title: sentence(series.name) };
}

/** The page of a series that was read more than once, where the readings are on pages of their own. */
function seriesFile(series: Series): string {
  return `measurements/${anchor(series.item)}.html`;
}

/** All series in one table, each leading to its page; then what was read once. */
function atAGlance(context: ViewContext): readonly Block[] {
  const { say } = context;
  const [once] = onceAndOften(context);
  const isOnce = new Set(once);
  const place = (series: Series): string => (isOnce.has(series) ? 'measurements.html#read-once' : seriesFile(series));
  return [
    heading(2, say('The last readings'), 'last-readings'),
    summaryTable(context, (series) =>
      isToldWhole(context, series)
        ? sentence(series.name)
        : [{ kind: 'link', text: sentence(series.name), to: `page:${place(series)}` }],
    ),
    ...readOnce(context, once),
  ];
}
