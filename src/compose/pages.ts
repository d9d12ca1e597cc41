// The pages of a binder's site, in the order of its contents; each is made only when it is asked for.
import type { Book } from '../book/book.ts';
import type { Page, Sheet } from '../sheet/sheet.ts';
import type { ViewContext } from '../views/view.ts';
import { sheetsOf } from '../views/wording/sheet-names.ts';
import { benchPages } from './bench-pages.ts';
import { calculationPages } from './calculation-pages.ts';
import { contextOf } from './context.ts';
import { jobPages } from './job-pages.ts';
import { logPages } from './log-pages.ts';
import { manualPart } from './manual-pages.ts';
import { pagePart, siteList, type Head, type PagePart, type SiteList } from './page-parts.ts';
import { measurementPages } from './measurement-pages.ts';
import { partPages } from './part-pages.ts';
import { photoPages } from './photo-pages.ts';
import { sheetBlocks } from './sheet-blocks.ts';
import { alphabetFolder, searchFile } from './search-entries.ts';
import { searchPages } from './search-pages.ts';
import { workingPages } from './working-pages.ts';
import { tablePages } from './table-pages.ts';
import { yearTables } from './year-table-pages.ts';
import { sitePages } from './site-pages.ts';
import { leftOut } from './sheets.ts';
import { lines } from '../views/wording/blocks.ts';

/** A page that can be made alone. */
export interface PageSpec {
  /** File below the output folder. */
  readonly file: string;
  readonly title: string;
  /** Entry of the site's contents; the first page of a section is the one its entry leads to. */
  readonly section: string;
  readonly make: () => Page;
  /** Ids of the worked figures whose workings stand on it. */
  readonly workings?: readonly string[];
  /** Data that its script works with, as JSON in a file of this binder’s own below `assets/`. */
  readonly script?: { readonly file: string; readonly data: () => string };
  /** Changes when the page may have changed; absent: make it again every time. */
  readonly inputs?: string;
}

/** All pages of the site. `sheets` are those that have a PDF. */
export function composePages(book: Book, sheets: readonly Sheet[]): readonly PageSpec[] {
  return composeSite(book, sheets).all();
}

/** The site in its parts, in the order of its contents. `sheets` are those that have a PDF. */
export function composeSite(book: Book, sheets: readonly Sheet[]): SiteList {
  const context = contextOf(book);
  const { say } = context;
  const printed = new Set(sheets.map(({ id }) => id));
  const [front, back] = sitePages(context, printed);
  const headed = (file: string, section: string): Head => ({ file, title: say(section), section: say(section) });
  const [first, ...others] = [
    ...front.map(alone),
    pagePart(['bench.html', 'bench/'], () => benchPages(context), headed('bench.html', 'At the bench')),
    pagePart(['log.html', 'log-', 'log/'], () => logPages(context), headed('log.html', 'Log')),
    pagePart(
      ['measurements.html', 'measurements/'],
      () => measurementPages(context),
      headed('measurements.html', 'Measurements'),
    ),
    pagePart(['part-by-part'], () => partPages(context), headed('part-by-part.html', 'Part by part')),
    pagePart(['photos.html', 'photo-pages/'], () => photoPages(context), headed('photos.html', 'Photos')),
    ...back.map((page) => (page.file === 'workings.html' ? workingsPart(context, page, printed) : alone(page))),
    ...yearTables.map(({ folder, pages }) => pagePart([folder], () => pages(context))),
    pagePart(['calculations/'], () => calculationPages(context)),
    pagePart(['tables/'], () => tablePages(context)),
    manualPart(context),
    pagePart(['sheets/'], () => sheetPages(context, printed)),
    pagePart(['jobs/'], () => jobPages(context)),
  ];
  if (first === undefined) return siteList([]);
  // The search stands second in the contents, and knows all others.
  const search = pagePart(
    [searchFile, alphabetFolder],
    () => searchPages(context, siteList([first, ...others]).all()),
    headed(searchFile, 'Search'),
  );
  return siteList([first, search, ...others]);
}

function alone(page: PageSpec): PagePart {
  return pagePart(
    [],
    () => [page],
    page,
    (file) => file === page.file,
  );
}

function workingsPart(context: ViewContext, page: PageSpec, printed: ReadonlySet<string>): PagePart {
  const pdf = printed.has('workings') ? { pdf: 'print/workings.pdf' } : {};
  const part = pagePart(['workings.html', 'workings-'], () => workingPages(context, { ...page, ...pdf }), page);
  return { ...part, hasWorkings: true };
}

function sheetPages(context: ViewContext, printed: ReadonlySet<string>): readonly PageSpec[] {
  const shown = sheetsOf(context.book).filter((named) => named.definition.on.includes('screen'));
  return shown.map((named) => {
    const file = `sheets/${named.id}.html`;
    const title = context.say(named.title);
    const { section } = named.definition;
    return {
      file,
      title,
      section: context.say(section),
      make: () => {
        const missing = leftOut(context);
        const blocks = sheetBlocks(context, named, 'screen');
        return {
          file,
          title,
          section: context.say(section),
          blocks: missing.length === 0 ? blocks : [lines(missing), ...blocks],
          ...(printed.has(named.id) ? { pdf: `print/${named.id}.pdf` } : {}),
        };
      },
    };
  });
}
