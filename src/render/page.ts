// One page of the site: its blocks in the site's frame.
import type { Block, Page } from '../sheet/sheet.ts';
import { renderTemplate } from './engine.ts';
import { pageScope } from './scope.ts';
import type { SiteFrame, SitePage } from './site-frame.ts';
import { plainText } from './text-html.ts';
import { withVisibleSigns } from './visible-signs.ts';

/** The whole HTML of a page. Pure: the same page and frame give the same text. */
export function renderPage(page: Page, site: SiteFrame): string {
  // Pages of the contents hold the long lists; on the others a way to narrow them would only stand in the way.
  const narrows = site.contents.some((line) => line.file === page.file);
  const photos = page.blocks.some(hasPhoto);
  const scope = pageScope(site, page.file);
  return withVisibleSigns(renderTemplate('page.njk', { page, site, narrows, photos, title: titleOf(page), scope }));
}

/** Only pages with photos ask for the script of the full view. */
function hasPhoto(block: Block): boolean {
  if (block.type === 'photo') return true;
  return block.type === 'prose' && block.paragraphs.some(({ kind }) => kind === 'photo');
}

/** A first heading that only repeats the title is the title: its anchor goes there, and what is below it follows. */
function titleOf(page: Page): { readonly id?: string; readonly below: readonly Block[] } {
  const [first, ...rest] = page.blocks;
  if (first?.type !== 'heading' || plainText(first.text) !== page.title) return { below: page.blocks };
  return { id: first.id, below: rest };
}

/** Makes and renders one page of a list, without the site generator: for a page that changed while it is being served. */
export function renderOne(spec: SitePage, site: SiteFrame): { readonly file: string; readonly content: string } {
  return { file: spec.file, content: renderPage(spec.make(), site) };
}
