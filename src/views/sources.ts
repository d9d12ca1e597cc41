// Where the figures come from: the makers' books with their corrections, and the published tables.
import { table, tableIds } from '../table/table.ts';
import type { Source } from '../records/model.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, joined, lines, row, stack } from './wording/blocks.ts';
import { unbroken } from './service-due.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const sources = defineView({
  id: 'sources',
  purpose: 'The books and tables that the figures come from, and where a book was corrected.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(books(context), corrected(context), published(context)),
});

function books({ book, say }: ViewContext): readonly Block[] {
  const frames = (source: Source): string =>
    [source.frames?.from, source.frames?.to].filter((text) => text !== undefined).join(' to ');
  return [
    heading(2, say('Makers’ books'), 'books'),
    {
      type: 'table',
      columns: [column(say('Title'), 7), column(say('Edition'), 3), column(say('For frames'), 5)],
      rows: book.records.maker.sources.map((source) => row(source.title, source.edition ?? '', frames(source))),
      empty: say('No maker’s book is recorded: no value on these sheets is a specification.'),
      use: 'read',
    },
  ];
}

function published({ say }: ViewContext): readonly Block[] {
  return [
    heading(2, say('Published tables'), 'tables'),
    lines(
      tableIds.map((id) => {
        const { about } = table(id);
        return [{ kind: 'link', text: say(about.title), to: `page:tables/${id}.html` }, `: ${about.edition}`];
      }),
    ),
  ];
}

function corrected({ book, say }: ViewContext): readonly Block[] {
  const { fasteners, limits, fluids, settings, services } = book.records.maker;
  const named = [
    ...fasteners,
    ...limits,
    ...fluids,
    ...settings,
    ...services.map((one) => ({ ...one, name: one.item })),
  ];
  const rows = named.flatMap(({ name, source }): readonly Row[] =>
    source.corrected === undefined
      ? []
      : [
          row(
            name,
            [{ kind: 'struck', text: unbroken(source.corrected.was) }],
            source.corrected.why,
            joined([source.title, source.page], ', '),
          ),
        ],
  );
  const head = heading(2, say('Where a book was corrected'), 'corrected');
  if (rows.length === 0) return [head, lines([say('Nowhere.')])];
  const columns = ['Value', 'Was', 'Why', 'Book, page'].map((text) => column(say(text), 4));
  return [head, { type: 'table', columns, rows, empty: '', use: 'read' }];
}
