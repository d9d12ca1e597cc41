// The card tied to the bars of a machine that is laid up: since when, what the records say must be undone, and that it is not started before.
import type { Block, CardsBlock, Text } from '../sheet/sheet.ts';
import type { Job } from '../records/model.ts';
import { column, heading, sentence } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { workParticulars, workThing } from './wording/work.ts';
import { cardFoot } from './wording/records-up-to.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const card = { width: 140, height: 100 } as const;

export const layUpCard = defineView({
  id: 'lay-up-card',
  purpose: 'The card of a machine that is laid up, and a grid to look at it month by month.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => [cards(context), ...months(context)],
});

/** The lay-up that no later return has ended. */
export function layUpNow({ book }: Pick<ViewContext, 'book'>): Job | undefined {
  const done = book.records.jobs.filter(({ state, kind }) => state !== 'planned' && /^(lay-up|return)$/.test(kind));
  const last = done.at(-1);
  return last?.kind === 'lay-up' ? last : undefined;
}

function cards(context: ViewContext): CardsBlock {
  const { book, say } = context;
  const laid = layUpNow(context);
  const since = laid === undefined ? `${say('on')}:` : dayText(laid.date.from);
  const undo = laid === undefined ? [] : openLines(context, laid);
  const blank: readonly Text[] = [
    say('Rags in, how many:'),
    say('Plugs:'),
    say('Fuel, tap, bowl:'),
    say('Battery:'),
    say('Tyres:'),
    say('Key:'),
  ];
  return {
    type: 'cards',
    size: { width: card.width, height: card.height },
    hole: true,
    cards: [
      {
        title: `${say('Laid up')} ${since}`,
        lines: [
          [{ kind: 'strong', text: say('Not started before every line is undone and ticked on its sheet.') }],
          ...(undo.length === 0 ? blank : undo),
        ],
        foot: cardFoot(book),
      },
    ],
  };
}

/** What that record left off, loose, empty or put in, and its own words. */
function openLines({ book, say }: ViewContext, laid: Job): readonly Text[] {
  const open = book.off.open.filter((line) => line.job.id === laid.id);
  const lines = open.map((line): Text => {
    const more = workParticulars(book, say, line.entry);
    const thing = workThing(book, line.entry);
    return [{ kind: 'strong', text: `${sentence(say(line.state))}: ` }, more === '' ? thing : `${thing} (${more})`];
  });
  return [...lines, ...laid.stateLeft];
}

function months({ book, say }: ViewContext): readonly Block[] {
  const battery = book.records.machine.features.battery;
  return [
    heading(2, say('Month by month'), 'month-by-month'),
    {
      type: 'grid',
      columns: [
        column(say('Date'), 2),
        ...(battery ? [column(say('Battery, V'), 2)] : []),
        column(say('Tyres, front and rear'), 3),
        column(say('Damp, mice, leaks'), 4),
        column(say('Hand'), 2),
      ],
      rows: 6,
    },
  ];
}
