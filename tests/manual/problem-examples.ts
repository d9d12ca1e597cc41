// The pages of problems and queries: each entry is a code, the smallest bad files, and what is printed.
import { fenced, type Fenced } from './fenced.ts';
import { manualPage } from './manual-folder.ts';

export interface Entry {
  readonly page: string;
  readonly code: string;
  readonly prose: string;
  readonly files: readonly Fenced[];
  readonly report: string;
}

/** Entries of both pages, in order. */
export function problemEntries(): readonly Entry[] {
  return ['problems.md', 'queries.md'].flatMap((page) =>
    manualPage(page)
      .split(/^## /mu)
      .slice(1)
      .map((part) => entryOf(page, part)),
  );
}

function entryOf(page: string, part: string): Entry {
  const code = part.slice(0, part.indexOf('\n')).trim();
  const pieces = fenced(part);
  const report = pieces.find(({ language }) => language === 'report')?.text ?? '';
  const prose = part.slice(code.length, part.indexOf('```')).trim();
  return { page, code, prose, files: pieces.filter(({ language }) => language !== 'report'), report: report.trimEnd() };
}
