// Looking things up on the screen: the page of the search, and below it everything from A to Z for the reader without a script.
import type { Block, Page } from '../sheet/sheet.ts';
import type { ViewContext } from '../views/view.ts';
import { heading, lines, paragraphs, sentence } from '../views/wording/blocks.ts';
import { count } from '../views/wording/count.ts';
import type { PageSpec } from './pages.ts';
import { alphabetFolder, searchEntries, searchFile, type SearchEntry } from './search-entries.ts';

/** So many lines stand on one page of the alphabet: its HTML stays below 60 KB. */
const perPage = 300;

interface Part {
  readonly file: string;
  readonly title: string;
  readonly entries: readonly SearchEntry[];
}

/** The page of the search, then the pages of the alphabet. `others` are all other pages of the site. */
export function searchPages(context: ViewContext, others: readonly PageSpec[]): readonly PageSpec[] {
  const { say } = context;
  const section = say('Search');
  const entries = searchEntries(context.book, others);
  // Sorted when one of its pages is asked for: of a served binder that is hardly ever.
  let sorted: readonly Part[] | undefined;
  const parts = (): readonly Part[] => (sorted ??= alphabet(context, entries));
  const first = { file: searchFile, title: section, section };
  const search = { script: 'search.js', with: 'search-index.js', label: section, data: '' };
  return [
    { ...first, make: () => ({ ...first, blocks: searchBlocks(context, parts()), bench: search }) },
    ...Array.from({ length: Math.ceil(entries.length / perPage) }, (_, index): PageSpec => {
      const file = fileOf(index);
      const title = (): string => parts()[index]?.title ?? '';
      const blocks = (): readonly Block[] => [listOf(parts()[index]?.entries ?? [])];
      return {
        file,
        section,
        get title() {
          return title();
        },
        make: () => ({ file, title: title(), section, blocks: blocks(), ...beside(parts(), index) }),
      };
    }),
  ];
}

function fileOf(index: number): string {
  return `${alphabetFolder}${count(index + 1)}.html`;
}

function searchBlocks({ say }: ViewContext, parts: readonly Part[]): readonly Block[] {
  return [
    heading(2, say('From A to Z'), 'a-to-z'),
    lines(parts.map(({ title, file }) => [{ kind: 'link', text: title, to: `page:${file}` }])),
    paragraphs(
      say(
        'The search finds words that are only begun, or misspelt by a letter, in both dialects; numbers it finds with and without their signs. It needs scripts; the list does not.',
      ),
    ),
  ];
}

/** In the order of the alphabet, large and small letters alike, numbers as they are counted; of the same title, as in the binder. */
function alphabet({ say }: ViewContext, entries: readonly SearchEntry[]): readonly Part[] {
  const keyed = entries.map((entry, index) => ({ entry, index, key: keyOf(entry.title) }));
  const sorted = keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : a.index - b.index));
  const pages = Math.ceil(sorted.length / perPage);
  // Pages alike in length: a last one of three lines is hardly a part of the alphabet.
  const each = Math.ceil(sorted.length / pages);
  return Array.from({ length: pages }, (_, page): Part => {
    const those = sorted.slice(page * each, (page + 1) * each).map(({ entry }) => entry);
    const title = pages === 1 ? say('From A to Z') : lettersOf(those);
    return { file: fileOf(page), title, entries: those };
  });
}

const signs = /[^\p{L}\p{N} ]/gu;
const plainLetters = /^[A-Za-z ]*$/u;

function keyOf(title: string): string {
  if (plainLetters.test(title)) return title.toLowerCase();
  return title
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(signs, '')
    .replaceAll(/\d+/gu, (digits) => digits.padStart(4, '0'));
}

/** `A to F`: the letters that a page of the alphabet begins and ends with; several of each where one would not tell them apart. */
function lettersOf(entries: readonly SearchEntry[]): string {
  const [first = '', last = ''] = [entries[0], entries.at(-1)].map((entry) => keyOf(entry?.title ?? ''));
  const apart = Array.from(first).findIndex((letter, index) => letter !== last[index]);
  const letters = apart <= 0 ? 1 : apart + 1;
  const [from, to] = [first, last].map((key) => sentence(key.slice(0, letters).trim()));
  return `${from ?? ''} – ${to ?? ''}`;
}

function listOf(entries: readonly SearchEntry[]): Block {
  return lines(
    entries.map(({ title, kind, file }) => [{ kind: 'link', text: title, to: `page:${file}` }, ` · ${kind}`]),
  );
}

function beside(parts: readonly Part[], index: number): Pick<Page, 'previous' | 'next'> {
  const previous = parts[index - 1];
  const next = parts[index + 1];
  return {
    ...(previous === undefined ? {} : { previous: { file: previous.file, title: previous.title } }),
    ...(next === undefined ? {} : { next: { file: next.file, title: next.title } }),
  };
}
