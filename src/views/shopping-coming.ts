// What is on its way, away at work, to be sent back for a deposit, and here but not fitted.
import type { ShoppingList } from '../book/shopping/shopping-list.ts';
import { supplierOf } from '../book/shopping/shopping-lines.ts';
import { awayText, comingText, coreText, countedName } from '../book/shopping/shopping-text.ts';
import type { Block, Row, TableBlock } from '../sheet/sheet.ts';
import { column, heading, paragraphs, row, sentence, stack } from './wording/blocks.ts';
import { withDates } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { itemName } from './wording/named.ts';
import type { ViewContext } from './view.ts';

/** A table with a tick, a thing, what is said of it and its record; nothing where it has no rows. */
function part(context: ViewContext, id: string, title: string, tick: string, rows: readonly Row[]): readonly Block[] {
  if (rows.length === 0) return [];
  const { say } = context;
  const table: TableBlock = {
    type: 'table',
    columns: [
      column(tick, 1, 'centre'),
      column(say('What'), 6),
      column(say('How it stands'), 7),
      column(say('Record'), 5),
    ],
    rows,
    empty: '',
    use: 'work',
  };
  return [heading(2, title, id), table];
}

/** Four short tables, each only where there is something to say. */
export function comingAndAway(context: ViewContext, list: ShoppingList): readonly Block[] {
  const { book, say } = context;
  const { today } = book;
  const coming = list.coming.map((one) =>
    row(
      { box: 'tick', id: `come/${one.part.part}` },
      countedName(one.part.part, one.count),
      withDates(
        [one.part.from, comingText(one, today, supplierOf([book], one.part.from))]
          .filter((text) => text !== undefined)
          .join(', '),
      ),
      [jobTitle(one.job)],
    ),
  );
  const away = list.away.map((one) =>
    row(
      { box: 'tick', id: `back/${one.entry.thing}` },
      sentence(itemName(book, one.entry.thing)),
      withDates(awayText(one, today).join('; ')),
      [jobTitle(one.job)],
    ),
  );
  const cores = list.cores.map((one) =>
    row({ box: 'tick', id: `core/${one.part.part}` }, one.part.part, withDates(coreText(one, today)), [
      jobTitle(one.job),
    ]),
  );
  const here = list.here.map((one) =>
    row({ box: 'tick', id: `here/${one.part.part}` }, countedName(one.part.part, one.count), one.part.note ?? '', [
      jobTitle(one.job),
    ]),
  );
  return stack(
    part(context, 'on-its-way', say('On its way'), say('Come'), coming),
    part(context, 'away', say('Away at work'), say('Back'), away),
    part(context, 'send-back', say('Old parts to send back'), say('Sent'), cores),
    part(context, 'here', say('Here and not fitted'), say('Compared'), here),
    here.length + coming.length === 0
      ? undefined
      : paragraphs(
          say(
            'Common practice: a new part is held against the old one before anything is thrown away, and the old one is kept until the new one is proved.',
          ),
        ),
  );
}
