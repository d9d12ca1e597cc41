// The contents of the binder, as in a book. A long list is folded away on a narrow screen, without a script: all but the search and where one is.
import type { Page } from '../sheet/sheet.ts';
import { escapeHtml } from './escape.ts';
import { folderOf } from './href.ts';
import { keptHtml } from './kept-html.ts';
import type { Scope } from './scope.ts';
import { lineOf, type ContentsLine } from './site-frame.ts';

/** The contents on a page. They are the same on all pages of one folder and one line, and there may be thousands of these. */
export function contentsHtml(page: Page, scope: Scope): string {
  const lines = scope.site.contents;
  const here = lineOf(lines, page);
  const isListed = lines.some((line) => line.file === page.file);
  const key = ['contents', folderOf(page.file), here?.file, isListed ? page.file : ''].join('\n');
  return keptHtml(scope.site, key, () => linesHtml(lines, { file: page.file, here }, scope));
}

interface Place {
  readonly file: string;
  /** The line that the page belongs under. */
  readonly here: ContentsLine | undefined;
}

function linesHtml(lines: readonly ContentsLine[], place: Place, scope: Scope): readonly string[] {
  const folds = lines.length > 8;
  return [
    `<nav class="contents${folds ? ' folds' : ''}" id="contents" aria-label="Contents">\n<ul>\n`,
    ...lines.map((line) => lineHtml(line, place, scope)),
    '</ul>\n',
    ...(folds ? [foldLinks] : []),
    '</nav>\n',
  ];
}

const foldLinks =
  '<p class="unfold"><a href="#contents">Contents</a></p>\n<p class="fold"><a href="#page">Fold the contents</a></p>\n';

function lineHtml(line: ContentsLine, { file, here }: Place, scope: Scope): string {
  const kept = line.file === 'search.html' || line === here ? ' class="kept"' : '';
  const current = line.file === file ? ' aria-current="page"' : line === here ? ' aria-current="true"' : '';
  return `<li${kept}><a href="${escapeHtml(scope.href(line.file))}"${current}>${escapeHtml(line.title)}</a></li>\n`;
}
