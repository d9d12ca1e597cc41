// The frame round every page: running head, contents, the page itself, and whose records these are.
import type { Page } from '../sheet/sheet.ts';
import { contentsHtml } from './contents-html.ts';
import { escapeHtml } from './escape.ts';
import { folderOf } from './href.ts';
import { keptHtml } from './kept-html.ts';
import type { Scope } from './scope.ts';
import type { SiteFrame } from './site-frame.ts';

/** What stands in the frame. */
export interface Framed {
  readonly page: Page;
  /** Id of the title, where something leads to it. */
  readonly titleId: string | undefined;
  /** HTML of the blocks below the title. */
  readonly below: string;
  /** Photos stand among them, and the script of the full view is asked for. */
  readonly photos: boolean;
  /** Its long lists can be narrowed. */
  readonly narrows: boolean;
}

/** The whole document. The two signs of the frame beyond Latin letters are written by number: with none other in it, a page takes half the memory. */
export function framedHtml(framed: Framed, scope: Scope): string {
  const { page, titleId, below, narrows } = framed;
  const { site } = scope;
  const id = titleId === undefined ? '' : ` id="${escapeHtml(titleId)}"`;
  return (
    `${headHtml(framed, scope)}${contentsHtml(page, scope)}\n<main id="page" tabindex="-1"${narrows ? ' class="narrows"' : ''}>\n` +
    `<h1${id}>${escapeHtml(page.title)}</h1>\n${printHtml(page, scope)}${below}\n${benchHtml(page)}</main>\n` +
    `${turnHtml(page, scope)}${colophon(site)}`
  );
}

function headHtml({ page, photos }: Framed, scope: Scope): string {
  const { site } = scope;
  const { with: library, script } = page.bench ?? {};
  const key = [folderOf(page.file), photos ? 'photos' : '', library, script].join('\n');
  const begin = keptHtml(site, 'head', () => policyAnd(site));
  const end = keptHtml(site, `scripts\n${key}`, () => [
    ` · ${escapeHtml(site.machine)}</title>\n<link rel="stylesheet" href="${escapeHtml(scope.href('assets/splitpin.css'))}">\n`,
    scriptHtml('splitpin.js', scope),
    photos ? scriptHtml('photo-view.js', scope) : '',
    scriptHtml(library, scope),
    scriptHtml(script, scope),
    site.live === undefined ? '' : `<script src="${escapeHtml(site.live)}" defer></script>\n`,
    '</head>\n<body>\n<a class="skip" href="#page">Skip to the page</a>\n',
    runningHead(scope),
  ]);
  return `${begin}<title>${escapeHtml(page.title)}${end}`;
}

/** The beginning of every page: its language, what it may load, how broad it is shown. */
function policyAnd({ language, live }: SiteFrame): readonly string[] {
  const connect = live === undefined ? '' : "connect-src 'self'; ";
  return [
    `<!doctype html>\n<html lang="${language}">\n<head>\n<meta charset="utf-8">\n`,
    "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; img-src 'self'; style-src 'self'; ",
    `script-src 'self'; font-src 'self'; ${connect}base-uri 'none'; form-action 'none'">\n`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">\n<meta name="color-scheme" content="light dark">\n',
  ];
}

function scriptHtml(file: string | undefined, scope: Scope): string {
  return file === undefined ? '' : `<script src="${escapeHtml(scope.href(`assets/${file}`))}" defer></script>\n`;
}

/** Whose binder it is; the name leads to its first page. */
function runningHead({ site: { machine, frame, contents }, href }: Scope): string {
  const first = contents.find(({ file }) => file === 'index.html');
  const name = escapeHtml(machine);
  const named = first === undefined ? name : `<a href="${escapeHtml(href(first.file))}">${name}</a>`;
  const number = frame === '' ? '' : `<p class="frame">Frame &#8230;${escapeHtml(frame)}</p>\n`;
  return `<header class="running">\n<p class="machine">${named}</p>\n${number}</header>\n`;
}

function printHtml({ pdf }: Page, { site, href }: Scope): string {
  if (pdf === undefined || !site.prints) return '';
  return `<p class="to-print"><a href="${escapeHtml(href(pdf))}">This sheet as a PDF to print</a></p>\n`;
}

function benchHtml({ bench }: Page): string {
  if (bench === undefined) return '';
  const data = `data-table="${escapeHtml(bench.data)}" aria-label="${escapeHtml(bench.label)}"`;
  return `<section id="bench" class="bench" ${data} hidden></section>\n`;
}

function turnHtml({ previous, next }: Page, scope: Scope): string {
  if (previous === undefined && next === undefined) return '';
  const link = (rel: string, { file, title }: NonNullable<Page['next']>): string =>
    `<a rel="${rel}" href="${escapeHtml(scope.href(file))}">${escapeHtml(title)}</a>`;
  const before = previous === undefined ? '' : `<p class="before">Before: ${link('prev', previous)}</p>\n`;
  const after = next === undefined ? '' : `<p class="after">After: ${link('next', next)}</p>\n`;
  return `<nav class="turn" aria-label="Before and after">\n${before}${after}</nav>\n`;
}

function colophon(site: SiteFrame): string {
  return keptHtml(site, 'colophon', () => {
    const records = site.recordsDate === '' ? 'No record yet' : `Records of ${escapeHtml(site.recordsDate)}`;
    const version = `version <span class="figure">${escapeHtml(site.recordsVersion)}</span>`;
    return [
      `<footer class="colophon">\n<p>${records}, ${version}. `,
      'The maker&#8217;s manual goes before this binder wherever the two differ.</p>\n</footer>\n</body>\n</html>\n',
    ];
  });
}
