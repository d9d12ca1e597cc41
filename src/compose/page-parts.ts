// A site in its parts: the pages of a part are listed when one of them is asked for. While a binder is served most parts never are.
import type { PageSpec } from './pages.ts';

/** A line of the contents, as its page has it. */
export interface Head {
  readonly file: string;
  readonly title: string;
  readonly section: string;
}

export interface PagePart {
  /** Whether a page of this name would be one of this part's. */
  readonly owns: (file: string) => boolean;
  readonly pages: () => readonly PageSpec[];
  /** Its first page, where it can be one of the contents: known without listing the part. */
  readonly head?: Head;
  /** Its pages hold workings; see `workings` of a page. */
  readonly hasWorkings?: true;
}

/** Every page of a site, and each by its name. */
export interface SiteList {
  readonly all: () => readonly PageSpec[];
  readonly named: (file: string) => PageSpec | undefined;
  /** The page where a worked figure stands; undefined where none has it. */
  readonly ofWorking: (id: string) => string | undefined;
  /** The first page of each section, in order. */
  readonly contents: readonly Head[];
}

/** A part whose pages begin with one of `homes`: `log.html`, `log-`, `log/`. It is listed once. */
export function pagePart(
  homes: readonly string[],
  list: () => readonly PageSpec[],
  head?: Head,
  owns: (file: string) => boolean = (file) => homes.some((home) => file.startsWith(home)),
): PagePart {
  let listed: readonly PageSpec[] | undefined;
  return { owns, pages: () => (listed ??= list()), ...(head === undefined ? {} : { head }) };
}

/** The parts in the order of the site. */
export function siteList(parts: readonly PagePart[]): SiteList {
  const named = new Map<PagePart, ReadonlyMap<string, PageSpec>>();
  const namesIn = (part: PagePart): ReadonlyMap<string, PageSpec> => {
    const before = named.get(part);
    if (before !== undefined) return before;
    const made = new Map(part.pages().map((page) => [page.file, page]));
    named.set(part, made);
    return made;
  };
  let workings: ReadonlyMap<string, string> | undefined;
  return {
    all: () => parts.flatMap((part) => part.pages()),
    named: (file) => {
      for (const part of parts) {
        const page = part.owns(file) ? namesIn(part).get(file) : undefined;
        if (page !== undefined) return page;
      }
      return undefined;
    },
    ofWorking: (id) => (workings ??= workingsIn(parts.filter((part) => part.hasWorkings === true))).get(id),
    contents: firstOfEachSection(parts.flatMap(({ head }) => head ?? [])),
  };
}

function workingsIn(parts: readonly PagePart[]): ReadonlyMap<string, string> {
  const pages = parts.flatMap((part) => part.pages());
  return new Map(pages.flatMap(({ file, workings = [] }) => workings.map((id) => [id, `${file}#${id}`] as const)));
}

function firstOfEachSection(heads: readonly Head[]): readonly Head[] {
  const first = new Map<string, Head>();
  for (const head of heads) if (!first.has(head.section)) first.set(head.section, head);
  return [...first.values()].map(({ file, section }) => ({ file, title: section, section }));
}
