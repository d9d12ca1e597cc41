// The machine part by part: the list of its parts by system, a page for the life of each, and what was only ever fitted.
import { partLives, type PartLife } from '../book/part-lives.ts';
import type { Block } from '../sheet/sheet.ts';
import { lifeName, partLifeBlocks } from '../views/part-life.ts';
import { fittedOnly, partList, partsByTelling } from '../views/part-list.ts';
import type { ViewContext } from '../views/view.ts';
import { heading, joined, paragraphs } from '../views/wording/blocks.ts';
import { count, countOf } from '../views/wording/count.ts';
import { uniqueAnchors } from '../views/wording/unique-anchors.ts';
import { turning } from './turning.ts';
import type { PageSpec } from './pages.ts';

/** So many lines of what was only fitted make a page. */
const perPage = 150;

/** Pages of the parts; the first is `part-by-part.html`. */
export function partPages(context: ViewContext): readonly PageSpec[] {
  const { book, say } = context;
  const section = say('Part by part');
  const { told, followed, fitted } = partsByTelling(partLives(book));
  const names = uniqueAnchors(followed, ({ key }) => key);
  const fileOf = (life: PartLife): string => `part-by-part/${names.get(life) ?? ''}.html`;
  const beside = turning(followed.map((life) => ({ file: fileOf(life), title: lifeName(context, life) })));
  const each = followed.map((life, index): PageSpec => {
    const page = { file: fileOf(life), title: lifeName(context, life), section };
    return { ...page, make: () => ({ ...page, blocks: partLifeBlocks(context, life), ...beside(index) }) };
  });
  const rest = fittedPages(context, section, fitted);
  const first = { file: 'part-by-part.html', title: section, section };
  const list = (): readonly Block[] => [
    partList(context, told, (life) => (names.has(life) ? fileOf(life) : undefined)),
    ...toFitted(context, rest, fitted.length),
  ];
  return [{ ...first, make: () => ({ ...first, blocks: list() }) }, ...each, ...rest];
}

function fittedPages(context: ViewContext, section: string, fitted: readonly PartLife[]): readonly PageSpec[] {
  const { say } = context;
  const pages = Array.from({ length: Math.ceil(fitted.length / perPage) }, (_, index) => ({
    file: `part-by-part/only-fitted-${String(index + 1)}.html`,
    title: index === 0 ? say('Only fitted') : `${say('Only fitted')}, ${count(index + 1)}`,
    section,
  }));
  const beside = turning(pages);
  return pages.map((page, index): PageSpec => {
    const those = fitted.slice(index * perPage, (index + 1) * perPage);
    return { ...page, make: () => ({ ...page, blocks: [fittedOnly(context, those)], ...beside(index) }) };
  });
}

function toFitted({ say }: ViewContext, pages: readonly PageSpec[], many: number): readonly Block[] {
  if (pages.length === 0) return [];
  const what = countOf(
    many,
    say('part of which only the fitting is recorded'),
    say('parts of which only the fitting is recorded'),
  );
  return [
    heading(2, say('Only fitted'), 'only-fitted'),
    paragraphs(
      joined(
        [`${what}: `, ...pages.map((page) => [{ kind: 'link', text: page.title, to: `page:${page.file}` } as const])],
        '',
      ),
    ),
  ];
}
