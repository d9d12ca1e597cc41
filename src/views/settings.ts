// Settings and fluids of the makers' books: value and range, how they are taken, quantity and grade, book and page.
import { printRange } from '../figure/print.ts';
import type { Source } from '../records/model.ts';
import type { Block } from '../sheet/sheet.ts';
import { column, heading, joined, paragraphs, row } from './wording/blocks.ts';
import { conditionText, valueText, writtenText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const settings = defineView({
  id: 'settings',
  purpose: 'Settings with value and range, and fluids with quantity and grade.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { settings: set, fluids } = context.book.records.maker;
    const [ofSettings, ofFluids] = [set, fluids].map((all) => oneBook(all.map(({ source }) => source)));
    // One book for both is named once, below both.
    const once = ofSettings === ofFluids;
    return [
      ...settingBlocks(context),
      ...(once ? [] : bookLine(context, ofSettings)),
      ...fluidBlocks(context),
      ...bookLine(context, ofFluids),
    ];
  },
});

/** The page alone where all come from one book, which is named below the table. */
function from({ say }: ViewContext, source: Source, all: readonly Source[]): string {
  const page = source.page === undefined ? undefined : `${say('page')}\u00a0${source.page}`;
  if (oneBook(all) !== undefined && page !== undefined) return page;
  return [source.title, page].filter((text) => text !== undefined).join(', ');
}

/** The title of the book that all come from. */
function oneBook(all: readonly Source[]): string | undefined {
  const titles = new Set(all.map((source) => source.title));
  const [title] = titles;
  return titles.size === 1 ? title : undefined;
}

function bookLine({ say }: ViewContext, title: string | undefined): readonly Block[] {
  return title === undefined ? [] : [paragraphs(`${say('Pages are those of')}: ${title}.`)];
}

function settingBlocks(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const all = book.records.maker.settings.map((one) => one.source);
  return [
    heading(2, say('Settings'), 'settings'),
    {
      type: 'table',
      columns: [
        column(say('Setting'), 5),
        column(say('Value'), 3, 'right'),
        column(say('Range'), 3),
        column(say('Taken'), 3),
        column(say('From'), 3),
      ],
      rows: book.records.maker.settings.map((one) => {
        const value = valueText(one.value);
        return row(
          one.name,
          value === undefined
            ? { box: 'write', id: `setting/${one.id}` }
            : { text: value, big: one.value.kind === 'read' },
          one.range === undefined ? '' : printRange(one.range),
          conditionText(one.condition),
          from(context, one.source, all),
        );
      }),
      empty: say('No setting is recorded.'),
      use: 'read',
    },
  ];
}

function fluidBlocks(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const all = book.records.maker.fluids.map((one) => one.source);
  return [
    heading(2, say('Fluids'), 'fluids'),
    {
      type: 'table',
      columns: [
        column(say('Fluid'), 5),
        column(say('Quantity'), 3, 'right'),
        column(say('Grade'), 4),
        column(say('From'), 3),
      ],
      rows: book.records.maker.fluids.map((one) => {
        const quantity = one.quantity === undefined ? say('not known') : writtenText(one.quantity);
        return row(one.name, quantity, joined([one.grade]), from(context, one.source, all));
      }),
      empty: say('No fluid is recorded.'),
      use: 'read',
    },
  ];
}
