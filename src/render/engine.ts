// The template engine: every template compiled once, and the filters with which templates set what is ready to print.
import nunjucks from 'nunjucks';
import type { BlankRow, Block, CardsBlock, Column, DrawingBlock, FactsBlock, GridBlock, Page } from '../sheet/sheet.ts';
import type { Paragraph, PhotoBlock, PlotBlock, TableBlock, Text } from '../sheet/sheet.ts';
import { columnsInUse, withWhat } from './blank-columns.ts';
import { cardShape } from './card-shape.ts';
import { tickHtml, writeHtml } from './cell-html.ts';
import { drawingSvg } from './drawing-svg.ts';
import { escapeHtml } from './escape.ts';
import { factRowsHtml } from './facts-html.ts';
import { photoHtml } from './photo-html.ts';
import { plotSvg } from './plot-svg.ts';
import { proseHtml } from './prose-html.ts';
import type { Scope } from './scope.ts';
import { lineOf, type SiteFrame } from './site-frame.ts';
import { squareCodeSvg } from './square-code.ts';
import { gridRowsHtml, headsHtml, rowsHtml, tableClass } from './table-html.ts';
import { templateOptions } from './template-options.ts';
import { templateLoader } from './template-source.ts';
import { textHtml } from './text-html.ts';

/** What a filter is called on: the context of the template it stands in. */
interface Asking {
  readonly ctx: { readonly scope: Scope };
}

const engine = new nunjucks.Environment(templateLoader(), templateOptions);
const templates = new Map<string, nunjucks.Template>();

/** Renders one of the files in templates/; a value that is missing throws, for that is a fault of a template. */
export function renderTemplate(name: string, context: object): string {
  let template = templates.get(name);
  if (template === undefined) {
    template = engine.getTemplate(name, true);
    templates.set(name, template);
  }
  return template.render(context);
}

/** Renders blocks one after the other, each with the template of its type. */
export function blocksHtml(blocks: readonly Block[], scope: Scope): string {
  let html = '';
  for (const block of blocks) html += renderTemplate(`blocks/${block.type}.njk`, { block, scope });
  return html;
}

const contentsKnown = new WeakMap<SiteFrame, Map<string, string>>();

/** The contents are the same on all pages of one folder and one line, and there may be thousands of these. */
function contentsHtml(page: Page, scope: Scope): string {
  const lines = scope.site.contents;
  const here = lineOf(lines, page);
  const isListed = lines.some((line) => line.file === page.file);
  const key = [page.file.split('/').slice(0, -1).join('/'), here?.file, isListed ? page.file : ''].join('\n');
  const known = contentsKnown.get(scope.site) ?? new Map<string, string>();
  contentsKnown.set(scope.site, known);
  const html = known.get(key) ?? renderTemplate('contents.njk', { lines, page, here, scope });
  known.set(key, html);
  return html;
}

/** Registers a filter whose result is HTML, made from a value and the scope of the page. */
function html<Value>(name: string, make: (value: Value, scope: Scope) => string): void {
  engine.addFilter(name, function (this: Asking, value: Value) {
    return new nunjucks.runtime.SafeString(make(value, this.ctx.scope));
  });
}

/** Registers a filter whose result is a plain value. */
function plain<Value, Result>(name: string, make: (value: Value, scope: Scope) => Result): void {
  engine.addFilter(name, function (this: Asking, value: Value) {
    return make(value, this.ctx.scope);
  });
}

html<readonly Block[]>('blocks', blocksHtml);
html<Page>('contents', contentsHtml);
html<Text>('text', textHtml);
html<readonly Paragraph[]>('prose', proseHtml);
html<PhotoBlock>('photo', photoHtml);
html<PlotBlock>('plot', plotSvg);
html<DrawingBlock>('drawing', drawingSvg);
html<string>('squareCode', squareCodeSvg);
html<FactsBlock['facts']>('factRows', factRowsHtml);
html<TableBlock>('rows', rowsHtml);
plain<TableBlock, string>('tableClass', tableClass);
html<GridBlock>('gridRows', gridRowsHtml);
html<readonly Column[]>('heads', headsHtml);
html<boolean | undefined>('tick', (done) => tickHtml(done === true));
plain<string, string>('href', (file, scope) => scope.href(file));
plain<number, number>('headingLevel', (level, scope) => scope.headingLevel(level));
plain<readonly BlankRow[], object>('columnsInUse', columnsInUse);
plain<BlankRow, string>('withWhat', withWhat);
plain<CardsBlock['size'], string>('cardShape', cardShape);
engine.addFilter('write', (text: string, unit: string | undefined) => {
  return new nunjucks.runtime.SafeString(writeHtml(escapeHtml(text), unit));
});
