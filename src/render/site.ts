// All pages of a site through Eleventy, into memory: the program's own writer decides which files changed.
import { resolve } from 'node:path';
import { configureSite } from './eleventy-config.ts';
import { ownFolder } from './own-folder.ts';
import type { SiteFrame, SitePage } from './site-frame.ts';

/** A file of the site, below the output folder, with forward slashes. */
export interface SiteFile {
  readonly file: string;
  readonly content: string;
}

/**
 * Renders every page and gives each away as soon as it is made: a site of thousands is never in memory as a whole. Nothing is
 * written to disk here. Eleventy is loaded only here, for its start is the dearest part of a small build.
 */
export async function renderSite(
  pages: readonly SitePage[],
  site: SiteFrame,
  give: (file: SiteFile) => void,
): Promise<void> {
  if (pages.length === 0) return;
  const { default: Eleventy } = await import('@11ty/eleventy');
  const given = new Set<string>();
  // Eleventy wraps what is thrown inside it; whoever takes the pages is to get his own fault back.
  const faults: unknown[] = [];
  const eleventy = new Eleventy(ownFolder('templates'), resolve('out'), {
    quietMode: true,
    source: 'script',
    configPath: false,
    config: (configuration) =>
      configureSite(configuration, pages, site, (file) => {
        given.add(file.file);
        try {
          if (faults.length === 0) give(file);
        } catch (fault) {
          faults.push(fault);
        }
      }),
  });
  eleventy.disableLogger();
  await eleventy.toJSON();
  if (faults.length > 0) throw faults[0];
  for (const { file } of pages) {
    if (!given.has(file)) throw new Error(`Eleventy gave no page ${file}.`);
  }
}
