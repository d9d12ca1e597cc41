// Eleventy's configuration: one template given as code for each section of the site, paginated over its pages.
// Eleventy reads no record and no template file; what it would pick up by itself is switched off.
import type { CodeTemplate, UserConfig } from '@11ty/eleventy';
import { renderOne } from './page.ts';
import type { SiteFrame, SitePage } from './site-frame.ts';

/** What becomes of a rendered page: the text that Eleventy is handed for it. */
export type HandOver = (page: { readonly file: string; readonly content: string }) => string;

/**
 * Sets up Eleventy for a site. The program and `.eleventy.ts` both use it, so both give the same HTML. Eleventy keeps the text of
 * every page to its end; the program takes each page itself and hands Eleventy an empty text.
 */
export function configureSite(
  configuration: UserConfig,
  pages: readonly SitePage[],
  site: SiteFrame,
  handOver: HandOver = ({ content }) => content,
): void {
  const byFile = new Map(pages.map((page) => [page.file, page]));
  configuration.setQuietMode(true);
  configuration.setTemplateFormats(['11ty.js']);
  // Installed as a package, our folder lies below node_modules, which Eleventy ignores unless told otherwise.
  configuration.ignores.delete('**/node_modules/**');
  configuration.setUseGitIgnore(false);
  configuration.setFrontMatterParsingOptions({ language: 'yaml', engines: refusedEngines() });
  for (const [index, files] of filesBySection(pages).entries()) {
    configuration.addTemplate(
      `section-${index}.11ty.js`,
      sectionTemplate(files, (file) => {
        const spec = byFile.get(file);
        if (spec === undefined) throw new Error('Eleventy asked for a page that it was not given.');
        return handOver(renderOne(spec, site));
      }),
    );
  }
}

/** Only file names pass through Eleventy's data, which it copies; the pages themselves stay with us. */
function sectionTemplate(files: readonly string[], render: (file: string) => string): CodeTemplate {
  return {
    data: {
      files,
      pagination: { data: 'files', size: 1, alias: 'file' },
      eleventyExcludeFromCollections: true,
      permalink: ({ file }: { readonly file: string }) => file,
    },
    render: ({ pagination }) => render(pagination.items[0] ?? ''),
  };
}

function filesBySection(pages: readonly SitePage[]): readonly (readonly string[])[] {
  const sections = new Map<string, string[]>();
  for (const page of pages) {
    const files = sections.get(page.section);
    if (files === undefined) sections.set(page.section, [page.file]);
    else files.push(page.file);
  }
  return [...sections.values()];
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
