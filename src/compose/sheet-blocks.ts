// The blocks of one sheet: its views in the order of its file.
import type { Block, Inline } from '../sheet/sheet.ts';
import { viewNamed } from '../views/list.ts';
import type { View, ViewContext } from '../views/view.ts';
import { paragraphs } from '../views/wording/blocks.ts';
import type { NamedSheet } from '../views/wording/sheet-names.ts';
import { pageOfView } from './site-pages.ts';

/** On the screen a table that grows with the records stops here: its page is to stay small. */
export const rowsOnScreen = 60;

/** A sheet of more views than this is a whole binder: on the screen it leads to the pages that show the same. */
const mostViews = 12;

interface Lead {
  readonly page: string;
  readonly title: string;
}

/**
 * Blocks of a sheet as printed, or for the screen, where a view that grows with every record leads to its own page of the
 * site instead. A view that does not exist gives nothing here; check-sheets.ts names it with its place.
 */
export function sheetBlocks(context: ViewContext, named: NamedSheet, on: 'paper' | 'screen'): readonly Block[] {
  const forSheet: ViewContext = {
    ...context,
    ...(named.job === undefined ? {} : { job: named.job }),
    ...(named.plan === undefined ? {} : { plan: named.plan }),
    ...(on === 'screen' ? { rows: rowsOnScreen } : {}),
  };
  const { views } = named.definition;
  const blocks: Block[] = [];
  let leads: Lead[] = [];
  const flush = (): void => {
    if (leads.length > 0) blocks.push(leadsBlock(forSheet, leads));
    leads = [];
  };
  for (const { view: id, options } of views) {
    const view = viewNamed(id);
    if (view === undefined) continue;
    const lead = on === 'screen' ? leadOf(view, views.length) : undefined;
    if (lead === undefined) flush();
    if (lead === undefined) blocks.push(...view.blocks({ ...forSheet, options }));
    else if (!leads.some(({ page }) => page === lead.page)) leads.push(lead);
  }
  flush();
  return blocks;
}

function leadOf(view: View, views: number): Lead | undefined {
  return view.long ?? (views > mostViews ? pageOfView(view.id) : undefined);
}

function leadsBlock({ say }: ViewContext, leads: readonly Lead[]): Block {
  const links = leads.flatMap(({ page, title }, index): readonly Inline[] => [
    ...(index === 0 ? [] : ['; ']),
    { kind: 'link', text: say(title), to: `page:${page}` },
  ]);
  return paragraphs([`${say('On the screen this part has pages of its own')}: `, ...links]);
}
