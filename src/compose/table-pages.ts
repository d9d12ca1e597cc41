// A page for each published table, under the sources.
import { table, tableIds } from '../table/table.ts';
import { tableBlocks } from '../views/tables.ts';
import type { ViewContext } from '../views/view.ts';
import type { PageSpec } from './pages.ts';

/** Pages of the tables, in alphabetical order of their ids. */
export function tablePages(context: ViewContext): readonly PageSpec[] {
  const section = context.say('Sources');
  return tableIds.map((id): PageSpec => {
    const page = { file: `tables/${id}.html`, title: context.say(table(id).about.title), section };
    return { ...page, make: () => ({ ...page, blocks: tableBlocks(context, id).slice(1) }) };
  });
}
