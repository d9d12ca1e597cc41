// The log by date: one page while it is short, else a page for each year, a long year on several; and narrowed.
import type { Job } from '../records/model.ts';
import type { Block, Inline } from '../sheet/sheet.ts';
import { logOf, newestFirst } from '../views/log.ts';
import type { ViewContext } from '../views/view.ts';
import { heading, lines, paragraphs } from '../views/wording/blocks.ts';
import { count, countOf } from '../views/wording/count.ts';
import { grouped } from '../views/wording/grouped.ts';
import { yearOf } from '../views/wording/day.ts';
import { logIndex, logIndexPages, narrowingLists, type LogIndex } from './log-index-pages.ts';
import { turning } from './turning.ts';
import type { PageSpec } from './pages.ts';

/** So many records fit on the one page of a short log, or on one of a long one. */
const perPage = 80;

interface Part {
  readonly file: string;
  readonly title: string;
  readonly jobs: readonly Job[];
}

/** Pages of the log; the first is `log.html`. */
export function logPages(context: ViewContext): readonly PageSpec[] {
  const { book, say } = context;
  const jobs = newestFirst(book.records.jobs);
  const section = say('Log');
  const index = logIndex(context, jobs);
  const first = { file: 'log.html', title: section, section };
  const narrowed = logIndexPages(context, index);
  if (jobs.length <= perPage) {
    return [{ ...first, make: () => ({ ...first, blocks: shortLog(context, index, jobs) }) }, ...narrowed];
  }
  const parts = yearParts(context, jobs);
  const beside = turning(parts);
  const years = parts.map((part, at): PageSpec => {
    const page = { file: part.file, title: part.title, section };
    return { ...page, make: () => ({ ...page, blocks: logOf(context, part.jobs), ...beside(at) }) };
  });
  const bench = { script: 'log.js', with: 'search-index.js', label: say('Narrow the log'), data: '' };
  return [
    { ...first, make: () => ({ ...first, blocks: longLog(context, index, parts), bench }) },
    ...years,
    ...narrowed,
  ];
}

/** Years to leap to, the entries under them, and last the ways to narrow: whoever comes to read finds the newest entry first. */
function shortLog(context: ViewContext, index: LogIndex, jobs: readonly Job[]): readonly Block[] {
  if (jobs.length === 0) return [lines([context.say('There is no record.')])];
  const years = [...grouped(jobs, ({ date }) => yearOf(date.from))];
  const leaps = years.map(([year]) => ({ text: year, to: `page:log.html#year-${year}` }));
  return [
    ways(context, leaps),
    ...years.flatMap(([year, those]) => [heading(2, year, `year-${year}`), ...logOf(context, those)]),
    ...narrowingLists(context, index),
  ];
}

function longLog(context: ViewContext, index: LogIndex, parts: readonly Part[]): readonly Block[] {
  const { say } = context;
  const years = parts.map((part) => [
    { kind: 'link', text: part.title, to: `page:${part.file}` } as const,
    `: ${countOf(part.jobs.length, say('record'), say('records'))}`,
  ]);
  return [ways(context, []), heading(2, say('By year'), 'by-year'), lines(years), ...narrowingLists(context, index)];
}

/** One line of links inside the page: its years, and where it is narrowed. */
function ways({ say }: ViewContext, years: readonly { readonly text: string; readonly to: string }[]): Block {
  const all = [
    ...years,
    { text: say('Of one system'), to: 'page:log.html#of-one-system' },
    { text: say('Of one kind of work'), to: 'page:log.html#of-one-kind' },
  ];
  return paragraphs(
    all.flatMap(({ text, to }, at): readonly Inline[] => [...(at === 0 ? [] : [', ']), { kind: 'link', text, to }]),
  );
}

function yearParts({ say }: ViewContext, jobs: readonly Job[]): readonly Part[] {
  const years = grouped(jobs, ({ date }) => yearOf(date.from));
  return [...years].flatMap(([year, those]) => {
    const pages = Math.ceil(those.length / perPage);
    return Array.from({ length: pages }, (_, index): Part => {
      const more = index === 0 ? '' : `-${String(index + 1)}`;
      const title = pages === 1 ? `${say('Log of')} ${year}` : `${say('Log of')} ${year}, ${count(index + 1)}`;
      return { file: `log-${year}${more}.html`, title, jobs: those.slice(index * perPage, (index + 1) * perPage) };
    });
  });
}
