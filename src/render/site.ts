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
 * Renders every page, in the order in which the pages were given. Nothing is written to disk.
 * Eleventy is loaded only here, for its start is the dearest part of a small build.
 */
export async function renderSite(pages: readonly SitePage[], site: SiteFrame): Promise<readonly SiteFile[]> {
  if (pages.length === 0) return [];
  const { default: Eleventy } = await import('@11ty/eleventy');
  const output = resolve('out');
  const eleventy = new Eleventy(ownFolder('templates'), output, {
    quietMode: true,
    source: 'script',
    configPath: false,
    config: (configuration) => configureSite(configuration, pages, site),
  });
  eleventy.disableLogger();
  const rendered = new Map((await eleventy.toJSON()).map((page) => [fileOf(page, output), page.content]));
  return pages.map(({ file }) => ({ file, content: contentOf(rendered, file) }));
}

function fileOf(page: RenderedPage, output: string): string {
  return page.outputPath === false ? '' : relative(output, resolve(page.outputPath)).split(sep).join('/');
}

function contentOf(rendered: ReadonlyMap<string, string>, file: string): string {
  const content = rendered.get(file);
  if (content === undefined) throw new Error(`Eleventy gave no page ${file}.`);
  return content;
}
