// The blocks of one sheet: its views in the order of its file.
import type { Block } from '../sheet/sheet.ts';
import { viewNamed } from '../views/list.ts';
import type { View, ViewContext } from '../views/view.ts';
import { paragraphs } from '../views/wording/blocks.ts';
import type { NamedSheet } from '../views/wording/sheet-names.ts';

/**
 * Blocks of a sheet as printed, or for the screen, where a view that grows with every record leads to its own page of the
 * site instead. A view that does not exist gives nothing here; check-sheets.ts names it with its place.
 */
export function sheetBlocks(context: ViewContext, named: NamedSheet, on: 'paper' | 'screen'): readonly Block[] {
  const forSheet: ViewContext = {
    ...context,
    ...(named.job === undefined ? {} : { job: named.job }),
    ...(named.plan === undefined ? {} : { plan: named.plan }),
  };
  return named.definition.views.flatMap(({ view: id, options }) => {
    const view = viewNamed(id);
    if (view === undefined) return [];
    const led = on === 'screen' ? leadTo(forSheet, view) : undefined;
    return led ?? view.blocks({ ...forSheet, options });
  });
}

function leadTo({ say }: ViewContext, view: View): readonly Block[] | undefined {
  if (view.long === undefined) return undefined;
  const { page, title } = view.long;
  return [
    paragraphs([
      `${say('On the screen this part has pages of its own')}: `,
      { kind: 'link', text: say(title), to: `page:${page}` },
    ]),
  ];
}
