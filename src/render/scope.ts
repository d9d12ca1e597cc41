// What the drawing of one page needs to know besides its blocks: where the page stands, and how deep its headings are.
import type { SiteFrame } from './site-frame.ts';
import { folderOf, relativeHref } from './href.ts';

export interface Scope {
  readonly site: SiteFrame;
  /** Relative address of a file below the output folder. */
  readonly href: (file: string) => string;
  /** Relative address that a reference leads to; undefined when it leads nowhere, and then only its text is shown. */
  readonly link: (reference: string) => string | undefined;
  /** Level to set a heading at, given the depth it asks for: one below the last heading of less depth, so that none is skipped. */
  readonly headingLevel: (depth: number) => number;
  /** Counts up from 1 on each page: for ids that the blocks do not bring. */
  readonly nextNumber: () => number;
}

const addresses = new WeakMap<SiteFrame, Map<string, Map<string, string>>>();

/** Addresses seen from one folder: thousands of pages lead to the same few files. */
function hrefsFrom(site: SiteFrame, folder: string): Map<string, string> {
  const folders = addresses.get(site) ?? new Map<string, Map<string, string>>();
  addresses.set(site, folders);
  const known = folders.get(folder) ?? new Map<string, string>();
  folders.set(folder, known);
  return known;
}

/** A fresh scope for one drawing of the page `file`. The title of the page is its heading of level 1. */
export function pageScope(site: SiteFrame, file: string): Scope {
  const above: number[] = [];
  let count = 0;
  const known = hrefsFrom(site, folderOf(file));
  const href = (target: string): string => {
    // Seen from one folder a file has one address, but for the page itself.
    if (target.startsWith(file)) return relativeHref(file, target);
    const before = known.get(target);
    if (before !== undefined) return before;
    const made = relativeHref(file, target);
    known.set(target, made);
    return made;
  };
  return {
    site,
    href,
    link: (reference) => {
      const target = site.targetOf(reference);
      return target === undefined ? undefined : href(target);
    },
    headingLevel: (depth) => {
      while ((above.at(-1) ?? 0) >= depth) above.pop();
      return 1 + above.push(depth);
    },
    nextNumber: () => (count += 1),
  };
}
