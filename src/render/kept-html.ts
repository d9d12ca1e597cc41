// HTML that is the same on thousands of pages, kept for a site.
import type { SiteFrame } from './site-frame.ts';

const known = new WeakMap<SiteFrame, Map<string, string>>();

/**
 * The pieces as one text, made once for a key. Joined they lie in one row; added to each other, all of them would be walked through
 * again for every page that is written.
 */
export function keptHtml(site: SiteFrame, key: string, pieces: () => readonly string[]): string {
  const made = known.get(site) ?? new Map<string, string>();
  known.set(site, made);
  const before = made.get(key);
  if (before !== undefined) return before;
  const html = pieces().join('');
  made.set(key, html);
  return html;
}
