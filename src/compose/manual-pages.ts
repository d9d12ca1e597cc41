// The manual: the pages of content, the same for every machine, with an anchor at every heading.
import type { Block, Paragraph, Text } from '../sheet/sheet.ts';
import type { ViewContext } from '../views/view.ts';
import { anchor, heading } from '../views/wording/blocks.ts';
import type { PageSpec } from './pages.ts';
import type { SearchEntry } from './search-entries.ts';

/** `problems` is already the page of what to look at; the manual of problem codes has a name of its own. */
export function manualFile(id: string): string {
  return id === 'problems' ? 'problems-manual.html' : `${id}.html`;
}

/** Pages of the manual, in the order of their ids. */
export function manualPages(context: ViewContext): readonly PageSpec[] {
  const { book, say, prose } = context;
  const section = say('Manual');
  const ids = [...book.content.pages.keys()].toSorted();
  return ids.flatMap((id): readonly PageSpec[] => {
    const about = book.content.pages.get(id);
    if (about === undefined) return [];
    const page = { file: manualFile(id), title: about.title, section };
    return [{ ...page, make: () => ({ ...page, blocks: withAnchors(prose(about.body)) }) }];
  });
}

/** The manual for the search: its pages and their headings, cut from the text without setting it. */
export function manualEntries({ book, say }: ViewContext): readonly SearchEntry[] {
  const kind = say('manual');
  return [...book.content.pages].flatMap(([id, about]): readonly SearchEntry[] => {
    const file = manualFile(id);
    const seen = new Map<string, number>();
    const fenced = /^(```|~~~)[\s\S]*?^\1[^\S\n]*$/gmu;
    const heads = [...about.body.replaceAll(fenced, '').matchAll(/^#{2,6} +(.+?)[ #]*$/gmu)];
    return [
      { kind, title: about.title, file, words: () => '' },
      ...heads.map(([, text = '']) => {
        const title = text.replaceAll(/[`*_]/gu, '');
        return { kind, title, file: `${file}#${unique(seen, anchor(title))}`, words: () => about.title };
      }),
    ];
  });
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
