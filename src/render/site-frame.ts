// What every page of one binder's site has in common: whose binder it is, its contents, and where references lead.
import type { Page } from '../sheet/sheet.ts';

/** A page that can be made alone, when it is wanted (the same shape as compose's PageSpec). */
export interface SitePage {
  readonly file: string;
  readonly title: string;
  readonly section: string;
  readonly make: () => Page;
  /** Ids of the worked figures whose workings stand on it. */
  readonly workings?: readonly string[];
  /** Data that its script works with, as JSON in a file of this binder’s own below `assets/`. */
  readonly script?: { readonly file: string; readonly data: () => string };
}

/** One line of the site's contents. */
export interface ContentsLine {
  readonly title: string;
  readonly file: string;
  /** Pages of this section mark the line as current. */
  readonly section: string;
}

/** A photo as the site carries it: both files lie below the output folder; the size is that of the large one, in pixels. */
export interface SitePhoto {
  readonly large: string;
  readonly small: string;
  readonly width: number;
  readonly height: number;
}

export interface SiteFrame {
  readonly machine: string;
  /** Last characters of the frame number; empty when it is not known. */
  readonly frame: string;
  readonly language: 'en-GB' | 'en-US';
  /** Newest date in the records and the fingerprint of all of them, ready to print. */
  readonly recordsDate: string;
  readonly recordsVersion: string;
  readonly contents: readonly ContentsLine[];
  /** Turns `job:…`, `sheet:…`, `print:…`, `phone:…`, `page:…` or `working:…` into a file below the output folder, with its fragment if any. */
  readonly targetOf: (reference: string) => string | undefined;
  readonly photoOf: (file: string) => SitePhoto | undefined;
  /** False when the site is made without PDFs, so that nothing leads to one. */
  readonly prints: boolean;
  /** Script of the local server that reloads the page; absent from a built site. */
  readonly live?: string;
}

/** The facts that a frame is made from; `contents` is every section that begins with a page at the top unless given. */
export interface FrameFacts {
  readonly machine: string;
  readonly frame: string;
  readonly language: 'en-GB' | 'en-US';
  readonly recordsDate: string;
  readonly recordsVersion: string;
  readonly photoOf?: (file: string) => SitePhoto | undefined;
  readonly contents?: readonly ContentsLine[];
  /** False when the site is made without PDFs, so that nothing leads to one. */
  readonly prints?: boolean;
  readonly live?: string;
  /** Sheets that have a PDF, those without a page of their own among them. */
  readonly printed?: ReadonlySet<string>;
}

type PageName = Pick<SitePage, 'file' | 'title' | 'section' | 'workings'>;

/** The pages of a site by their names (the same shape as compose's SiteList); none need be listed before it is asked for. */
export interface SiteNames {
  readonly named: (file: string) => PageName | undefined;
  /** The page and fragment where a worked figure stands. */
  readonly ofWorking: (id: string) => string | undefined;
  readonly contents: readonly ContentsLine[];
}

/** Makes the frame of a site from the list of its pages. */
export function siteFrame(pages: readonly PageName[], facts: FrameFacts): SiteFrame {
  return frameOfNames(namesOf(pages), facts);
}

/** Makes the frame of a site whose pages are known by their names. */
export function frameOfNames({ named, ofWorking, contents }: SiteNames, facts: FrameFacts): SiteFrame {
  const prints = facts.prints ?? true;
  const isPage = (file: string): boolean => named(file) !== undefined;
  return {
    ...facts,
    prints,
    contents: facts.contents ?? contents,
    photoOf: facts.photoOf ?? (() => undefined),
    targetOf: eachOnce(
      (reference) =>
        workingAmong(ofWorking, reference) ??
        printAmong(facts.printed, reference) ??
        targetAmong(isPage, reference, prints),
    ),
  };
}

function namesOf(pages: readonly PageName[]): SiteNames {
  const files = new Map(pages.map((page) => [page.file, page]));
  const workings = new Map(
    pages.flatMap(({ file, workings: ids = [] }) => ids.map((id) => [id, `${file}#${id}`] as const)),
  );
  return {
    named: (file) => files.get(file),
    ofWorking: (id) => workings.get(id),
    contents: firstOfEachSection(pages),
  };
}

/** Thousands of pages refer to the same things: each is looked for once. */
function eachOnce(find: SiteFrame['targetOf']): SiteFrame['targetOf'] {
  const found = new Map<string, string | undefined>();
  return (reference) => {
    const before = found.get(reference);
    if (before !== undefined || found.has(reference)) return before;
    const target = find(reference);
    found.set(reference, target);
    return target;
  };
}

/** A section is entered by its first page; one whose pages all lie in a folder is reached from the pages above it. */
function firstOfEachSection(pages: readonly PageName[]): readonly ContentsLine[] {
  const lines = new Map<string, ContentsLine>();
  for (const { file, section } of pages) {
    if (!file.includes('/') && !lines.has(section)) lines.set(section, { title: section, file, section });
  }
  return [...lines.values()];
}

/** The line of the contents that a page belongs under: as `sheets/x.html` under `sheets.html`, else that of its section. */
export function lineOf(lines: readonly ContentsLine[], page: PageName): ContentsLine | undefined {
  const folder = page.file.split('/')[0] ?? '';
  const above = page.file.includes('/') ? lines.find((line) => line.file === `${folder}.html`) : undefined;
  return above ?? lines.find((line) => line.section === page.section);
}

function printAmong(printed: ReadonlySet<string> | undefined, reference: string): string | undefined {
  const id = reference.startsWith('print:') ? reference.slice('print:'.length) : undefined;
  return id !== undefined && printed?.has(id) === true ? `print/${id}.pdf` : undefined;
}

function workingAmong(ofWorking: SiteNames['ofWorking'], reference: string): string | undefined {
  return reference.startsWith('working:') ? ofWorking(reference.slice('working:'.length)) : undefined;
}

/** Where pages of each kind of reference may lie, in order of preference; `#` begins a fragment. */
const homes: Readonly<Record<string, readonly ((id: string) => string)[]>> = {
  job: [(id) => `jobs/${id}.html`],
  sheet: [(id) => `sheets/${id}.html`],
  working: [(id) => `workings/${id}.html`, (id) => `workings.html#${id}`],
  page: [(id) => id, (id) => `${id}.html`],
};

function targetAmong(isPage: (file: string) => boolean, reference: string, prints: boolean): string | undefined {
  const colon = reference.indexOf(':');
  const kind = reference.slice(0, colon);
  const id = reference.slice(colon + 1);
  // Every sheet that has a page has a PDF of the same name.
  if (kind === 'print') return prints && isPage(`sheets/${id}.html`) ? `print/${id}.pdf` : undefined;
  // Every planned job has a page for the telephone where its sheets are printed.
  if (kind === 'phone') return prints && isPage(`jobs/${id}.html`) ? `phone/${id}.html` : undefined;
  const candidates = (homes[kind] ?? []).map((home) => home(id));
  return candidates.find((candidate) => isPage(candidate.split('#')[0] ?? ''));
}
