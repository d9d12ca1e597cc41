// The photos by year, newest first: small, with caption, day and record, each leading to the large one; many on several pages.
import type { Book } from '../book/book.ts';
import type { Block } from '../sheet/sheet.ts';
import { thumbnail } from '../views/photographs.ts';
import type { ViewContext } from '../views/view.ts';
import { heading, lines } from '../views/wording/blocks.ts';
import { count } from '../views/wording/count.ts';
import { yearOf } from '../views/wording/day.ts';
import { grouped } from '../views/wording/grouped.ts';
import { turning } from './turning.ts';
import type { PageSpec } from './pages.ts';

/** So many photos make a page. */
const perPage = 60;

type Shown = Book['photos'][number];

/** Pages of the photos; the first is `photos.html`. */
export function photoPages(context: ViewContext): readonly PageSpec[] {
  const { book, say } = context;
  const section = say('Photos');
  const all = book.photos.toSorted((one, other) => (one.job.date.from < other.job.date.from ? 1 : -1));
  const pages = Array.from({ length: Math.max(1, Math.ceil(all.length / perPage)) }, (_, at) => ({
    file: at === 0 ? 'photos.html' : `photo-pages/${String(at + 1)}.html`,
    title: at === 0 ? section : `${section}, ${count(at + 1)}`,
    section,
  }));
  const beside = turning(pages);
  return pages.map((page, at): PageSpec => {
    const those = all.slice(at * perPage, (at + 1) * perPage);
    return { ...page, make: () => ({ ...page, blocks: blocksOf(context, those), ...beside(at) }) };
  });
}

function blocksOf({ say }: ViewContext, shown: readonly Shown[]): readonly Block[] {
  if (shown.length === 0) return [lines([say('No photo is named in a record.')])];
  const years = grouped(shown, ({ job }) => yearOf(job.date.from));
  return [...years].flatMap(([year, those]): readonly Block[] => [
    heading(2, year, `photos-${year}`),
    ...those.map(({ job, photo }) => thumbnail(job, photo)),
  ]);
}
