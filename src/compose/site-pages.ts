// The pages of the site that every machine has, each a few views under one title.
import type { Block, Page } from '../sheet/sheet.ts';
import { viewNamed } from '../views/list.ts';
import { nextTestBench, nextTestData, nextTestFile } from '../views/next-test-bench.ts';
import type { ViewContext } from '../views/view.ts';
import type { PageSpec } from './pages.ts';

interface Plain {
  readonly file: string;
  readonly title: string;
  readonly section?: string;
  readonly views: readonly (string | readonly [string, Readonly<Record<string, string>>])[];
  /** What its script works with, where it has one. */
  readonly bench?: (context: ViewContext) => Page['bench'];
  /** The file of what is too large for the page itself. */
  readonly script?: { readonly file: string; readonly data: (context: ViewContext) => string };
  /** Id of the sheet that holds the same for the printer. */
  readonly sheet?: string;
}

/** Before the log and the measurements in the contents. */
const front: readonly Plain[] = [
  {
    file: 'index.html',
    title: 'The machine',
    views: ['whose-copy', ['standing', { sheets: 'yes' }], 'portrait', 'machine-head'],
    sheet: 'machine-card',
  },
  {
    file: 'evening.html',
    title: 'This evening',
    views: [['evening', { minutes: '90' }], 'odd-minutes', 'way-back', 'order-of-work'],
    sheet: 'evening',
  },
  { file: 'sheets.html', title: 'Sheets to print', views: ['sheets-list'] },
  {
    file: 'off.html',
    title: 'What is off',
    views: ['on-the-bench', 'what-is-off', 'left-over', 'off-over-time'],
    sheet: 'state-left-in',
  },
  { file: 'hold-points.html', title: 'Hold points', views: ['all-hold-points'], sheet: 'hold-points' },
  {
    file: 'torque.html',
    title: 'Torque',
    views: ['torque-table', 'torque-by-thread', 'wrench-adaptor'],
    sheet: 'torque-table',
  },
  {
    file: 'next-test.html',
    title: 'Next test',
    views: [['next-test', { of: 'working' }]],
    sheet: 'next-test',
    bench: nextTestBench,
    script: { file: nextTestFile, data: nextTestData },
  },
  {
    file: 'settings.html',
    title: 'Settings and fluids',
    views: ['settings', 'machine-figures', 'air-and-jet'],
    sheet: 'settings',
  },
  {
    file: 'service.html',
    title: 'Service',
    views: ['general-schedules', ['service-due', { of: 'why' }], 'service-visits', ['running-in-plan', { of: 'open' }]],
    sheet: 'service-due',
  },
];

/** After them. */
const back: readonly Plain[] = [
  { file: 'parts.html', title: 'Parts', views: ['shopping', 'parts'], sheet: 'parts-to-get' },
  { file: 'costs.html', title: 'Costs', views: ['costs'] },
  { file: 'history.html', title: 'History', views: ['adopted', 'story', 'papers', 'known-findings'], sheet: 'history' },
  { file: 'problems.html', title: 'To look at', views: ['queries'] },
  { file: 'workings.html', title: 'Workings', views: ['workings'], sheet: 'workings' },
  { file: 'calculations.html', title: 'Calculations', section: 'Workings', views: ['calculations'] },
  { file: 'coverage.html', title: 'Coverage of the calculations', section: 'Workings', views: ['coverage'] },
  { file: 'sources.html', title: 'Sources', views: ['sources', 'instruments'] },
];

/** Ids of the views that pages of the site show; a test holds that every view is shown somewhere. */
export const viewsOnPages: ReadonlySet<string> = new Set(
  [...front, ...back].flatMap((page) => page.views.map((view) => (typeof view === 'string' ? view : view[0]))),
);

/** The page that shows a view, where one of the pages that every machine has does. */
export function pageOfView(id: string): { readonly page: string; readonly title: string } | undefined {
  const shows = ({ views }: Plain): boolean => views.some((view) => (typeof view === 'string' ? view : view[0]) === id);
  const plain = [...front, ...back].find(shows);
  return plain === undefined ? undefined : { page: plain.file, title: plain.title };
}

/** So many rows of a table that grows with the records keep a page small. */
export const rowsOnPage = 80;

/** Both lists as pages; a page whose sheet is printed leads to its PDF. */
export function sitePages(
  context: ViewContext,
  printed: ReadonlySet<string>,
): readonly [readonly PageSpec[], readonly PageSpec[]] {
  const make = (plain: Plain): PageSpec => sitePage(context, plain, printed);
  return [front.map(make), back.map(make)];
}

function sitePage(context: ViewContext, plain: Plain, printed: ReadonlySet<string>): PageSpec {
  const { file } = plain;
  const title = context.say(plain.title);
  const section = context.say(plain.section ?? plain.title);
  const pdf = plain.sheet !== undefined && printed.has(plain.sheet) ? { pdf: `print/${plain.sheet}.pdf` } : {};
  const page = { file, title, section };
  const { script } = plain;
  return {
    ...page,
    ...(script === undefined ? {} : { script: { file: script.file, data: () => script.data(context) } }),
    make: () => {
      const bench = plain.bench?.(context);
      return { ...page, blocks: blocksOf(context, plain), ...pdf, ...(bench === undefined ? {} : { bench }) };
    },
  };
}

function blocksOf(context: ViewContext, plain: Plain): readonly Block[] {
  return plain.views.flatMap((one) => {
    const [id, options] = typeof one === 'string' ? [one, {}] : one;
    return viewNamed(id)?.blocks({ ...context, options, rows: rowsOnPage }) ?? [];
  });
}
