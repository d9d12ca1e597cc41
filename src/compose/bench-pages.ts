// The workings at the bench: an overview and a page for each, worked out with the values of this machine.
import type { Block } from '../sheet/sheet.ts';
import { workingBlocks } from '../views/bench/working-blocks.ts';
import { workingBench } from '../views/bench/working-data.ts';
import { benchFile, workingsFor } from '../views/bench/workings-at-bench.ts';
import type { ViewContext } from '../views/view.ts';
import { column, paragraphs, row } from '../views/wording/blocks.ts';
import type { PageSpec } from './pages.ts';

/** Pages of the workings, the overview first. */
export function benchPages(context: ViewContext): readonly PageSpec[] {
  const { say } = context;
  const section = say('At the bench');
  const first = { file: 'bench.html', title: section, section };
  const each = workingsFor(context.book.records.machine.features).map((working): PageSpec => {
    const page = { file: benchFile(working.id), title: say(working.title), section };
    return {
      ...page,
      make: () => {
        const bench = workingBench(context, working);
        const blocks = workingBlocks(context, working);
        return bench === undefined ? { ...page, blocks } : { ...page, blocks, bench };
      },
    };
  });
  return [{ ...first, make: () => ({ ...first, blocks: overview(context) }) }, ...each];
}

function overview({ book, say }: ViewContext): readonly Block[] {
  return [
    {
      type: 'table',
      columns: [column(say('Working'), 5), column(say('What for'), 10)],
      rows: workingsFor(book.records.machine.features).map(({ id, title, about }) =>
        row([{ kind: 'link', text: say(title), to: `page:${benchFile(id)}` }], say(about)),
      ),
      empty: '',
      use: 'read',
    },
    paragraphs([
      `${say('Each is worked out on its own page, with no network; a value may be written as in a record: 0,35\u00a0mm, 14\u00a0thou, 1:25. Any other calculation has a form on its own page')}: `,
      { kind: 'link', text: say('every calculation'), to: 'page:calculations.html' },
      '.',
    ]),
  ];
}
