// Everything that can be looked for in a binder: each thing with what it is, the page where it stands, and the words that lead to it.
import type { Book } from '../book/book.ts';
import { systemsOfJobs } from '../book/systems-of-job.ts';
import type { ViewContext } from '../views/view.ts';
import { contextOf } from './context.ts';
import { jobWords } from './job-words.ts';
import { manualBase, manualFile } from '../views/wording/manual-parts.ts';
import { manualEntries } from './manual-pages.ts';
import type { PageSpec } from './pages.ts';
import { thingEntries } from './thing-entries.ts';

export interface SearchEntry {
  /** What it is, in a word or two. */
  readonly kind: string;
  readonly title: string;
  /** Page below the output folder, with a fragment if any. */
  readonly file: string;
  /** Further words; made only for the file of the search. */
  readonly words: () => string;
}

/** No page of the alphabet is a thing to be found, nor is the search itself. */
export const searchFile = 'search.html';
export const alphabetFolder = 'a-z/';

const none = (): string => '';

function withoutFragment(file: string): string {
  const cut = file.indexOf('#');
  return cut < 0 ? file : file.slice(0, cut);
}

/** Entries in the order of the binder: its pages, the things in them, the records by date, the manual. */
export function searchEntries(book: Book, pages: readonly PageSpec[]): readonly SearchEntry[] {
  const context = contextOf(book);
  const files = new Set(pages.map(({ file }) => file));
  const isThere = ({ file }: SearchEntry): boolean => files.has(withoutFragment(file));
  return [
    ...pageEntries(context, pages),
    ...thingEntries(context),
    ...jobEntries(context),
    ...manualEntries(context),
  ].filter(isThere);
}

/** Records have entries of their own, and further pages of one thing are reached from its first. */
function pageEntries({ say, book }: ViewContext, pages: readonly PageSpec[]): readonly SearchEntry[] {
  const jobs = new Set(book.records.jobs.map(({ id }) => `jobs/${id}.html`));
  const manual = new Set([...book.content.pages.keys()].map(manualFile));
  const wanted = pages.filter(({ file }) => {
    if (jobs.has(file) || furtherPage.test(file)) return false;
    return !file.startsWith(alphabetFolder) && file !== searchFile && !manual.has(manualBase(file));
  });
  return wanted.map(({ file, title, section }) => {
    const folder = kinds[file.split('/')[0] ?? ''];
    const kind = folder === undefined ? (section === title ? 'page' : section) : folder;
    return { kind: say(kind), title, file, words: none };
  });
}

/** `calculations/bolt-strength-2.html`: the rest of what a page before it began. */
const furtherPage = /^(?:calculations\/.+|workings)-\d+\.html$/u;

/** What the pages of a folder are. */
const kinds: Readonly<Record<string, string>> = {
  sheets: 'sheet',
  bench: 'working at the bench',
  calculations: 'calculation',
  tables: 'published table',
  measurements: 'readings',
  'part-by-part': 'life of a part',
  log: 'log of one kind or system',
};

function jobEntries({ book, say }: ViewContext): readonly SearchEntry[] {
  const { jobs } = book.records;
  const most = charactersFor(jobs.length);
  const systems = systemsOfJobs(book);
  return jobs.map((job) => ({
    kind: say('record'),
    title: job.title,
    file: `jobs/${job.id}.html`,
    words: () =>
      jobWords(
        job,
        most,
        [...(systems.get(job) ?? [])].map(({ name }) => say(name)),
      ),
  }));
}

/** Characters of words for all records together, which a telephone reads at once; and the most and the least for one. */
const forAll = 900_000;
const mostForOne = 2000;
const leastForOne = 180;

/** Of many records less is kept of each: its things and parts go first, then the beginning of its story. */
export function charactersFor(records: number): number {
  return Math.max(leastForOne, Math.min(mostForOne, Math.floor(forAll / Math.max(1, records))));
}
