// Eleventy's configuration: one template given as code, paginated over all pages of the site.
// Eleventy reads no record and no template file; what it would pick up by itself is switched off.
import type { CodeTemplate, EleventyData, UserConfig } from '@11ty/eleventy';
import { renderOne } from './page.ts';
import type { SiteFrame, SitePage } from './site-frame.ts';

/** Takes a page instead of Eleventy, which then keeps nothing of it. */
export type TakePage = (page: { readonly file: string; readonly content: string }) => void;

/**
 * How many pages are one page to Eleventy where it does not write them: it copies its data, keeps a record and works out addresses
 * for each, which would cost more than the rendering of a short page.
 */
const atOnce = 100;

/**
 * Sets up Eleventy for a site. The program and `.eleventy.ts` both use it, so both give the same HTML. By itself Eleventy is asked for
 * a file a page; whoever takes the pages gets each as soon as it is made.
 */
export function configureSite(
  configuration: UserConfig,
  pages: readonly SitePage[],
  site: SiteFrame,
  take?: TakePage,
): void {
  const byFile = new Map(pages.map((page) => [page.file, page]));
  const pageOf = (file: string): { readonly file: string; readonly content: string } => {
    const spec = byFile.get(file);
    if (spec === undefined) throw new Error('Eleventy asked for a page that it was not given.');
    return renderOne(spec, site);
  };
  configuration.setQuietMode(true);
  configuration.setTemplateFormats(['11ty.js']);
  // Installed as a package, our folder lies below node_modules, which Eleventy ignores unless told otherwise.
  configuration.ignores.delete('**/node_modules/**');
  configuration.setUseGitIgnore(false);
  configuration.setFrontMatterParsingOptions({ language: 'yaml', engines: refusedEngines() });
  const files = [...byFile.keys()];
  configuration.addTemplate(
    'pages.11ty.js',
    take === undefined
      ? pagesTemplate(files, 1, (items) => items.map((file) => pageOf(file).content).join(''))
      : pagesTemplate(files, atOnce, (items) => {
          for (const file of items) take(pageOf(file));
          return '';
        }),
  );
}

/** Only file names pass through Eleventy's data, which it copies; the pages themselves stay with us. */
function pagesTemplate(
  files: readonly string[],
  size: number,
  render: (files: readonly string[]) => string,
): CodeTemplate {
  return {
    data: {
      files,
      pagination: { data: 'files', size },
      eleventyExcludeFromCollections: true,
      permalink: ({ pagination }: EleventyData) => pagination.items[0] ?? false,
    },
    render: ({ pagination }) => render(pagination.items),
  };
}

/** Front matter that is code is never run: every such engine of Eleventy's refuses. */
function refusedEngines(): Readonly<Record<string, { readonly parse: () => never }>> {
  const refused = {
    parse: (): never => {
      throw new Error('Front matter that is code is not run.');
    },
  };
  return Object.fromEntries(['js', 'javascript', 'jsLegacy', 'node', 'coffee', 'cson'].map((name) => [name, refused]));
}
