// What to get, by supplier and shop hours: what holds a hold point first, with sizes and samples; then what is on its way, away, to send back.
import { numbersText, superseded } from '../book/shopping/numbers.ts';
import { usedTogether } from '../book/shopping/used-together.ts';
import { shoppingList } from '../book/shopping/shopping-list.ts';
import type { ShoppingList } from '../book/shopping/shopping-list.ts';
import type { ToGet, Trip } from '../book/shopping/trips.ts';
import { buyingText, countedName, holdingText, shopText } from '../book/shopping/shopping-text.ts';
import type { Fastener, PartEntry } from '../records/model.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { column, heading, joined, row, stack } from './wording/blocks.ts';
import { times } from './wording/count.ts';
import { withDates } from './wording/day.ts';
import { fastenerSize } from './wording/fastener.ts';
import { jobTitle } from './wording/job.ts';
import { insteadText } from './wording/original-kept.ts';
import { comingAndAway } from './shopping-coming.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const shopping = defineView({
  id: 'shopping',
  purpose:
    'What to get by supplier, hold-point blockers first, with sizes, samples and alternatives; what is on its way, away or to send back.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { book, say } = context;
    const list = shoppingList([book]);
    return stack(
      spending(context, list),
      heading(2, say('To get'), 'to-get'),
      toGet(context, list.trips),
      implied(context, list),
      comingAndAway(context, list),
    );
  },
});

function spending({ say }: ViewContext, { spendingHeld: [held] }: ShoppingList): readonly Block[] {
  if (held === undefined) return [];
  return [
    { type: 'caution', grade: 'NOTE', text: say('The point before money is spent is held: look at the papers first.') },
  ];
}

function toGet(context: ViewContext, trips: readonly Trip[]): Block {
  const { say, book } = context;
  const of = superseded(book.parts.map(({ part }) => part));
  return {
    type: 'table',
    columns: [
      column(say('Got'), 1, 'centre'),
      column(say('Part, number'), 6),
      column(say('Bring, or instead'), 6),
      column(say('Price seen'), 2, 'right'),
      column(say('For'), 5),
    ],
    rows: trips.flatMap((trip): readonly Row[] => [
      { kind: 'band', text: shop(context, trip) },
      ...trip.toGet.map((one) => partRow(context, one, (part) => numbersText(part, of))),
    ]),
    empty: say('No part is wanted.'),
    use: 'work',
  };
}

function shop({ say }: ViewContext, trip: Trip): Text {
  const name = trip.name === '' ? say('supplier not named') : trip.name;
  const more = withDates(shopText(trip).join('; '));
  return [{ kind: 'strong', text: name }, ...(more === '' ? [] : [`: ${more}`])];
}

function partRow({ say }: ViewContext, one: ToGet, numbers: (part: PartEntry) => string): Row {
  const { part, count, askedBy, holds } = one;
  const name: Text =
    holds === undefined ? countedName(part.part, count) : [{ kind: 'strong', text: countedName(part.part, count) }];
  const size = one.fastener === undefined ? undefined : sizeWithout(one.fastener);
  const kind = part.class === undefined ? undefined : say(part.class);
  const asked = askedBy.map((who): Text =>
    askedBy.length > 1 ? [`${times(who.count)} `, jobTitle(who.job)] : [jobTitle(who.job)],
  );
  return row(
    { box: 'tick', id: `to-get/${part.part}` },
    joined([name, size, numbers(part), kind, insteadText(say, part)], ', '),
    withDates(buyingText(one).join('; ')),
    part.price === undefined ? '' : formatMoney(part.price),
    joined([...asked, holdingText(one)]),
  );
}

/** Thread and length; how many stands before the name. */
function sizeWithout(fastener: Fastener): string {
  const { count: _, ...one } = fastener;
  return fastenerSize(one);
}

/** What the work uses up and nobody wrote down: to be looked for in the drawer before it is bought. */
function implied({ say }: ViewContext, { implied: all }: ShoppingList): readonly Block[] {
  if (all.length === 0) return [];
  return [
    heading(2, say('Used up by the work, and on no list: look in the drawer'), 'used-up'),
    {
      type: 'table',
      columns: [
        column(say('There'), 1, 'centre'),
        column(say('To get'), 1, 'centre'),
        column(say('What'), 9),
        column(say('For'), 6),
      ],
      rows: usedTogether(all).map((one) =>
        row(
          { box: 'tick', id: `there/${one.key}` },
          { box: 'tick', id: `short/${one.key}` },
          one.text,
          joined([
            ...one.jobs.map((job): Text => [jobTitle(job)]),
            one.forWhatIsOff ? say('what is off now') : undefined,
          ]),
        ),
      ),
      empty: '',
      use: 'work',
    },
  ];
}
