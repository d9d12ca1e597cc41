// The manual: the pages of content, the same for every machine, with an anchor at every heading.
import type { Block, Paragraph, Text } from '../sheet/sheet.ts';
import type { Content } from '../records/content-model.ts';
import { keptWith } from '../records/kept-with.ts';
import type { ViewContext } from '../views/view.ts';
import { anchor, heading } from '../views/wording/blocks.ts';
import { count } from '../views/wording/count.ts';
export { manualBase, manualFile } from '../views/wording/manual-parts.ts';
import { manualBase, manualFile, manualParts } from '../views/wording/manual-parts.ts';
import { byText } from '../book/in-order.ts';
import { manualProse } from './manual-prose.ts';
import { pagePart, type PagePart } from './page-parts.ts';
import type { PageSpec } from './pages.ts';
import type { SearchEntry } from './search-entries.ts';
import { turning } from './turning.ts';

/** The manual as a part of the site: it is the same for every machine of a dialect, and listed once. */
export function manualPart({ book, say }: ViewContext): PagePart {
  const { pages } = book.content;
  const section = say('Manual');
  return partOf(pages, section);
}

const partOf = keptWith((pages: ManualPages, section: string): PagePart => {
  const [first] = [...pages].toSorted(([one], [other]) => byText(one, other));
  const files = new Set([...pages.keys()].map(manualFile));
  const head = first === undefined ? undefined : { file: manualFile(first[0]), title: first[1].title, section };
  return pagePart(
    [],
    () => manualPages(pages, section),
    head,
    (file) => files.has(manualBase(file)),
  );
});

/** Pages of the manual, in the order of their ids; a long one in parts that follow each other. */
function manualPages(all: ManualPages, section: string): readonly PageSpec[] {
  const ids = [...all.keys()].toSorted();
  return ids.flatMap((id): readonly PageSpec[] => {
    const about = all.get(id);
    if (about === undefined) return [];
    const parts = manualParts(id, about.body);
    const named = parts.map((part) => ({
      part,
      page: { file: part.file, title: titleOf(about.title, part.number), section },
    }));
    const beside = turning(named.map(({ page }) => page));
    return named.map(({ part, page }, index): PageSpec => {
      return { ...page, make: () => ({ ...page, blocks: withAnchors(manualProse(part)), ...beside(index) }) };
    });
  });
}

function titleOf(title: string, number: number): string {
  return number === 1 ? title : `${title}, ${count(number)}`;
}

/** The manual for the search: its pages and their headings, cut from the text without setting it. */
export function manualEntries({ book, say }: ViewContext): readonly SearchEntry[] {
  return entriesOf(book.content.pages, say('manual'));
}

type ManualPages = Content['pages'];

/** The manual is the same for every machine: its headings are looked for once. */
const entriesOf = keptWith((pages: ManualPages, kind: string): readonly SearchEntry[] => {
  const on = new Map<string, Set<string>>();
  for (const [id, about] of pages)
    for (const title of headings(about.body)) on.set(title, (on.get(title) ?? new Set()).add(id));
  return [...pages].flatMap(([id, about]): readonly SearchEntry[] => [
    { kind, title: about.title, file: manualFile(id), words: () => '' },
    ...manualParts(id, about.body).flatMap(({ file, body }) => {
      const seen = new Map<string, number>();
      return headings(body).map((head) => {
        // A file has a heading on the page of formats and on that of keys: each says which it is.
        const title = (on.get(head)?.size ?? 0) > 1 ? `${head}: ${about.title}` : head;
        return { kind, title, file: `${file}#${unique(seen, anchor(head))}`, words: () => about.title };
      });
    }),
  ]);
});

/** Signs of emphasis come in pairs: that of `jobs/*.md` is none. */
const emphasis = /(\*\*?|__?)(\S(?:.*?\S)?)\1/gu;

/** Headings below the title, without what stands in fences. */
function headings(body: string): readonly string[] {
  const fenced = /^(```|~~~)[\s\S]*?^\1[^\S\n]*$/gmu;
  const heads = [...body.replaceAll(fenced, '').matchAll(/^#{2,6} +(.+?)[ #]*$/gmu)];
  return heads.map(([, text = '']) => text.replaceAll('`', '').replaceAll(emphasis, '$2'));
}

/** Headings become blocks with an anchor each; the same heading twice gets a number. */
function withAnchors(paragraphs: readonly Paragraph[]): readonly Block[] {
  const blocks: Block[] = [];
  const seen = new Map<string, number>();
  let run: Paragraph[] = [];
  const flush = (): void => {
    if (run.length > 0) blocks.push({ type: 'prose', paragraphs: run });
    run = [];
  };
  for (const one of paragraphs) {
    if (one.kind === 'heading') {
      flush();
      blocks.push(heading(one.level === 3 ? 2 : 3, one.text, unique(seen, anchor(words(one.text)))));
    } else run.push(one);
  }
  flush();
  return blocks;
}

function unique(seen: Map<string, number>, id: string): string {
  const times = (seen.get(id) ?? 0) + 1;
  seen.set(id, times);
  return times === 1 ? id : `${id}-${String(times)}`;
}

function words(text: Text): string {
  return typeof text === 'string'
    ? text
    : text.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('');
}
