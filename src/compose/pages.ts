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
import { manualPages } from './manual-pages.ts';
import { measurementPages } from './measurement-pages.ts';
import { partPages } from './part-pages.ts';
import { photoPages } from './photo-pages.ts';
import { sheetBlocks } from './sheet-blocks.ts';
import { searchPages } from './search-pages.ts';
import { workingPages } from './working-pages.ts';
import { tablePages } from './table-pages.ts';
import { yearTablePages } from './year-table-pages.ts';
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
  const context = contextOf(book);
  const [front, back] = sitePages(context, new Set(sheets.map((sheet) => sheet.id)));
  const pdf = sheets.some(({ id }) => id === 'workings') ? { pdf: 'print/workings.pdf' } : {};
  const others = [
    ...front,
    ...benchPages(context),
    ...logPages(context),
    ...measurementPages(context),
    ...partPages(context),
    ...photoPages(context),
    ...back.flatMap((page) => (page.file === 'workings.html' ? workingPages(context, { ...page, ...pdf }) : [page])),
    ...yearTablePages(context),
    ...calculationPages(context),
    ...tablePages(context),
    ...manualPages(context),
    ...sheetPages(context, new Set(sheets.map((sheet) => sheet.id))),
    ...jobPages(context),
  ];
  // The search stands second in the contents, and knows all others.
  return [...others.slice(0, 1), ...searchPages(context, others), ...others.slice(1)];
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
