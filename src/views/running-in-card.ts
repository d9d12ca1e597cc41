// The running-in card: where it began, what the schedule asks at its end, and the card for the pocket with blanks for the clock.
import type { DueLine } from '../book/book.ts';
import type { Block, CardsBlock, Text } from '../sheet/sheet.ts';
import { column, heading, row } from './wording/blocks.ts';
import { cardFoot } from './wording/records-up-to.ts';
import { inlineFigure } from './wording/figure.ts';
import { formNamed, linesOf } from './wording/form.ts';
import { jobNamed } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const card = { width: 140, height: 100 } as const;

export const runningInCard = defineView({
  id: 'running-in-card',
  purpose: 'A card for the pocket with the steps of running-in, and what the schedule asks at its end.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => [cards(context), ...services(context)],
});

function cards(context: ViewContext): CardsBlock {
  const { book, say } = context;
  const form = formNamed(context, 'running-in');
  const steps: readonly Text[] =
    form === undefined ? [] : linesOf(context, form).map((line) => ours(context, form.at, line.text));
  const unit = book.records.machine.clock.at(-1)?.unit.symbol;
  const inUnit = unit === undefined ? '' : ` (${unit})`;
  const begins: Text = [{ kind: 'strong', text: `${say('Begins at, on the clock')}${inUnit}:` }];
  const foot = cardFoot(book);
  return {
    type: 'cards',
    size: { width: card.width, height: card.height },
    hole: true,
    cards: [{ title: say('Running in'), lines: [begins, ...steps], foot }],
  };
}

/** Services that the schedule asks once, after running-in. */
function services(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const asked = book.due.filter(({ service }) => service.first?.after === 'running-in');
  return [
    heading(2, say('What the schedule asks once, after running-in'), 'once-after-running-in'),
    {
      type: 'table',
      columns: [
        column(say('Done'), 1, 'centre'),
        column(say('Item'), 6),
        column(say('At'), 3),
        column(say('On the clock'), 3, 'right'),
        column(say('Last done'), 6),
      ],
      rows: asked.map((due) => serviceRow(context, due)),
      empty: say('The schedule asks nothing at the end of running-in: take it from the maker’s book.'),
      use: 'work',
    },
  ];
}

function serviceRow(context: ViewContext, due: DueLine): ReturnType<typeof row> {
  const { service, lastDone } = due;
  const { say } = context;
  return row(
    { box: 'tick', id: `running-in/${service.id}` },
    `${ours(context, service.at, service.item)}: ${say(service.action)}`,
    service.first?.at.text ?? '',
    lastDone === undefined && due.dueOnClock !== undefined
      ? [inlineFigure(due.dueOnClock, `due-${service.id}`)]
      : { box: 'line' },
    lastDone === undefined ? say('not recorded') : jobNamed(lastDone.job),
  );
}
