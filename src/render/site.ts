// All pages of a site through Eleventy, into memory: the program's own writer decides which files changed.
import { relative, resolve, sep } from 'node:path';
import type { RenderedPage } from '@11ty/eleventy';
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
  const output = resolve('out');
  const given = new Set<string>();
  // Eleventy wraps what is thrown inside it; whoever takes the pages is to get his own fault back.
  const faults: unknown[] = [];
  const eleventy = new Eleventy(ownFolder('templates'), output, {
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
        return '';
      }),
  });
  eleventy.disableLogger();
  const rendered = await eleventy.toJSON();
  if (faults.length > 0) throw faults[0];
  const placed = new Set(rendered.map((page) => fileOf(page, output)));
  for (const { file } of pages) {
    if (!given.has(file) || !placed.has(file)) throw new Error(`Eleventy gave no page ${file}.`);
  }
}

/** The file below the output folder where Eleventy would have written the page. */
function fileOf(page: RenderedPage, output: string): string {
  if (page.outputPath === false) return '';
  const plain = output + '/';
  if (page.outputPath.startsWith(plain)) return page.outputPath.slice(plain.length);
  return relative(output, resolve(page.outputPath)).split(sep).join('/');
}
