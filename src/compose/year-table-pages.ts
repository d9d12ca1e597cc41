// Tables that outgrow their page: whole, year by year, each long year on pages that follow each other. Short ones need no such pages.
import type { Block } from '../sheet/sheet.ts';
import { costEntries, costTable } from '../views/costs.ts';
import { offLines, offTable } from '../views/off-over-time.ts';
import { fittedParts, fittedTable } from '../views/parts.ts';
import type { ViewContext } from '../views/view.ts';
import { count } from '../views/wording/count.ts';
import { grouped } from '../views/wording/grouped.ts';
import { yearOf } from '../views/wording/day.ts';
import type { PageSpec } from './pages.ts';
import { rowsOnScreen } from './sheet-blocks.ts';
import { rowsOnPage } from './site-pages.ts';
import { turning } from './turning.ts';

/** A long table: where its pages lie, what it is called, and its rows already by year. */
interface LongTable {
  readonly folder: string;
  readonly title: string;
  readonly section: string;
  readonly rows: number;
  /** Newest year first; each gives the blocks of the rows from one to another. */
  readonly years: readonly {
    readonly year: string;
    readonly rows: number;
    readonly blocks: (from: number, to: number) => readonly Block[];
  }[];
}

/** Pages of costs, of fitted parts and of what was off, by their folders, where a page or the page of a sheet shows only the newest. */
export const yearTables: readonly {
  readonly folder: string;
  readonly pages: (context: ViewContext) => readonly PageSpec[];
}[] = [
  { folder: 'costs/', pages: (context) => longPages(costsByYear(context)) },
  { folder: 'parts/', pages: (context) => longPages(partsByYear(context)) },
  { folder: 'off/', pages: (context) => longPages(offByYear(context)) },
];

function costsByYear(context: ViewContext): LongTable {
  const { say } = context;
  return byYear({ folder: 'costs', title: say('Costs of'), section: say('Costs') }, costEntries(context), {
    yearOf: ({ day }) => yearOf(day),
    table: (those) => costTable(context, those),
  });
}

function partsByYear(context: ViewContext): LongTable {
  const { say } = context;
  return byYear({ folder: 'parts', title: say('Parts of'), section: say('Parts') }, fittedParts(context), {
    yearOf: ({ job }) => yearOf(job.date.from),
    table: (those) => fittedTable(context, those),
  });
}

function offByYear(context: ViewContext): LongTable {
  const { say } = context;
  return byYear({ folder: 'off', title: say('Off and on in'), section: say('What is off') }, offLines(context), {
    yearOf: ({ since }) => yearOf(since),
    table: (those) => offTable(context, those),
  });
}

function longPages(table: LongTable): readonly PageSpec[] {
  return table.rows > rowsOnScreen ? pagesOf(table) : [];
}

function byYear<T>(
  named: Pick<LongTable, 'folder' | 'title' | 'section'>,
  all: readonly T[],
  { yearOf: yearOfOne, table }: { readonly yearOf: (one: T) => string; readonly table: (those: readonly T[]) => Block },
): LongTable {
  const years = [...grouped(all, yearOfOne)].map(([year, those]) => ({
    year,
    rows: those.length,
    blocks: (from: number, to: number) => [table(those.slice(from, to))],
  }));
  return { ...named, rows: all.length, years };
}

function pagesOf({ folder, title, section, years }: LongTable): readonly PageSpec[] {
  const parts = years.flatMap(({ year, rows, blocks }) =>
    Array.from({ length: Math.ceil(rows / rowsOnPage) }, (_, at) => ({
      file: `${folder}/${year}${at === 0 ? '' : `-${String(at + 1)}`}.html`,
      title: `${title} ${year}${at === 0 ? '' : `, ${count(at + 1)}`}`,
      section,
      blocks: () => blocks(at * rowsOnPage, (at + 1) * rowsOnPage),
    })),
  );
  const beside = turning(parts);
  return parts.map(({ blocks, ...page }, index): PageSpec => {
    return { ...page, make: () => ({ ...page, blocks: blocks(), ...beside(index) }) };
  });
}
