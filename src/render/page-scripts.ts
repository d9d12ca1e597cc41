// Scripts of this binder's own that pages work with: their data, too large for the page itself, as a file that needs no fetch.
import { insideScript } from './search-file.ts';
import type { SitePage } from './site-frame.ts';

export interface PageScript {
  /** Below the output folder. */
  readonly file: string;
  readonly text: () => string;
}

/** The data files of those pages that have one. The same binder gives the same text. */
export function pageScripts(pages: readonly SitePage[]): readonly PageScript[] {
  return pages.flatMap(({ script }): readonly PageScript[] =>
    script === undefined
      ? []
      : [{ file: `assets/${script.file}`, text: () => `window.splitpinBench = ${insideScript(script.data())};\n` }],
  );
}
