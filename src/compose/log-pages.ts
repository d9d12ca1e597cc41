// The log by date: one page while it is short, else a page for each year, a long year on several.
import type { Job } from '../records/model.ts';
import type { Block } from '../sheet/sheet.ts';
import { logOf, newestFirst } from '../views/log.ts';
import type { ViewContext } from '../views/view.ts';
import { lines } from '../views/wording/blocks.ts';
import { count, countOf } from '../views/wording/count.ts';
import { yearOf } from '../views/wording/day.ts';
import type { PageSpec } from './pages.ts';

/** So many records fit on the one page of a short log. */
const short = 120;
/** So many on a page of a long one. */
const perPage = 250;

interface Part {
  readonly file: string;
  readonly title: string;
  readonly jobs: readonly Job[];
}

type Beside = Pick<Part, 'file' | 'title'>;

/** Pages of the log; the first is `log.html`. */
export function logPages(context: ViewContext): readonly PageSpec[] {
  const { book, say } = context;
  const jobs = newestFirst(book.records.jobs);
  const section = say('Log');
  if (jobs.length <= short) {
    const page = { file: 'log.html', title: section, section };
    return [{ ...page, make: () => ({ ...page, blocks: logBlocks(context, jobs) }) }];
  }
  const parts = yearParts(context, jobs);
  const first = { file: 'log.html', title: section, section };
  const years = parts.map((part, index): PageSpec => {
    const page = { file: part.file, title: part.title, section };
    return { ...page, make: () => ({ ...page, blocks: logBlocks(context, part.jobs), ...beside(parts, index) }) };
  });
  return [{ ...first, make: () => ({ ...first, blocks: yearLines(context, parts) }) }, ...years];
}

function logBlocks(context: ViewContext, jobs: readonly Job[]): readonly Block[] {
  return jobs.length === 0 ? [lines([context.say('There is no record.')])] : logOf(context, jobs);
}

function yearLines({ say }: ViewContext, parts: readonly Part[]): readonly Block[] {
  return [
    lines(
      parts.map((part) => [
        { kind: 'link', text: part.title, to: `page:${part.file}` },
        `: ${countOf(part.jobs.length, say('record'), say('records'))}`,
      ]),
    ),
  ];
}

function yearParts({ say }: ViewContext, jobs: readonly Job[]): readonly Part[] {
  const years = new Map<string, Job[]>();
  for (const job of jobs) {
    const year = yearOf(job.date.from);
    const those = years.get(year);
    if (those === undefined) years.set(year, [job]);
    else those.push(job);
  }
  return [...years].flatMap(([year, those]) => {
    const pages = Math.ceil(those.length / perPage);
    return Array.from({ length: pages }, (_, index): Part => {
      const more = index === 0 ? '' : `-${String(index + 1)}`;
      const title = pages === 1 ? `${say('Log of')} ${year}` : `${say('Log of')} ${year}, ${count(index + 1)}`;
      return { file: `log-${year}${more}.html`, title, jobs: those.slice(index * perPage, (index + 1) * perPage) };
    });
  });
}

/** The newer page is before, the older after, as the records stand. */
function beside(parts: readonly Part[], index: number): { readonly previous?: Beside; readonly next?: Beside } {
  const previous = parts[index - 1];
  const next = parts[index + 1];
  return {
    ...(previous === undefined ? {} : { previous: nameOf(previous) }),
    ...(next === undefined ? {} : { next: nameOf(next) }),
  };
}

function nameOf({ file, title }: Part): Beside {
  return { file, title };
}
