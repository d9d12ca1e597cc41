// One page of the site: its blocks in the site's frame.
import type { Block, Page, Row } from '../sheet/sheet.ts';
import { blocksHtml } from './block-html.ts';
import { framedHtml } from './page-frame.ts';
import { pageScope } from './scope.ts';
import type { SiteFrame, SitePage } from './site-frame.ts';
import { plainText } from './text-html.ts';

/** The whole HTML of a page. Pure: the same page and frame give the same text. */
export function renderPage(page: Page, site: SiteFrame): string {
  const scope = pageScope(site, page.file);
  const { id, below } = titleOf(page);
  return framedHtml(
    {
      page,
      titleId: id,
      below: blocksHtml(below, scope),
      photos: page.blocks.some(hasPhoto),
      // Pages of the contents hold the long lists; on the others a way to narrow them would only stand in the way.
      narrows: site.contents.some((line) => line.file === page.file),
    },
    scope,
  );
}

/** Only pages with photos, or with small pictures of sheets, ask for the script of the full view. */
function hasPhoto(block: Block): boolean {
  if (block.type === 'photo') return true;
  if (block.type === 'table') return showsSides(block.rows);
  return block.type === 'prose' && block.paragraphs.some(({ kind }) => kind === 'photo');
}

/** A table that shows first sides does so from its first row on. */
function showsSides(rows: readonly Row[]): boolean {
  const first = rows.find(({ kind }) => kind === 'cells');
  return first?.kind === 'cells' && first.cells.some(({ shows }) => shows !== undefined);
}

/** A first heading that only repeats the title is the title: its anchor goes there, and what is below it follows. */
function titleOf(page: Page): { readonly id?: string; readonly below: readonly Block[] } {
  const [first] = page.blocks;
  if (first?.type !== 'heading' || plainText(first.text) !== page.title) return { below: page.blocks };
  return { id: first.id, below: page.blocks.slice(1) };
}

/** Makes and renders one page of a list, without the site generator: for a page that changed while it is being served. */
export function renderOne(spec: SitePage, site: SiteFrame): { readonly file: string; readonly content: string } {
  return { file: spec.file, content: renderPage(spec.make(), site) };
}
