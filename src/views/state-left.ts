// The card on the handlebars: what is loose, drained, disconnected, open, away or temporary, and the next step.
import type { OpenLine } from '../book/book.ts';
import { hasHappened } from '../book/in-order.ts';
import type { CardsBlock, Text } from '../sheet/sheet.ts';
import { count, countOf } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { cardFoot } from './wording/records-up-to.ts';
import { workParticulars, workThing } from './wording/work.ts';
import { partsIn } from './still-holds.ts';
import { gravestFindings } from './known-findings.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** In the order in which it can hurt whoever walks up to the machine. */
export const openStates: readonly OpenLine['state'][] = [
  'temporary',
  'loose',
  'empty',
  'disconnected',
  'open',
  'off',
  'sent out',
];

/** A card about as large as two hands, read from a metre away. */
const card = { width: 140, height: 100 } as const;

export const stateLeft = defineView({
  id: 'state-left',
  purpose:
    'The card on the handlebars: what is loose, drained, disconnected, open, away or temporary, and the next step.',
  needs: 'machine',
  options: [],
  blocks: (context) => [cards(context)],
});

/** What is open, in the order of the card. */
function cardLines({ book, say }: ViewContext): readonly Text[] {
  return openStates.flatMap((state) => {
    const things = book.off.open.filter((line) => line.state === state);
    return things.map((line): Text => {
      // Who walks past the bars need not know what it costs.
      const { price: _price, ...shown } = line.entry;
      const more = workParticulars(book, say, shown);
      const thing = workThing(book, line.entry);
      return [{ kind: 'strong', text: `${say(state)}: ` }, more === '' ? thing : `${thing} (${more})`];
    });
  });
}

/** So many checks are named on the card; of more it is said how many. */
const mostChecks = 4;

/** Hold points that are held, and the checks that were proved once and are open again. */
function held({ book, say }: ViewContext): readonly Text[] {
  const points = book.holds
    .filter((hold) => !hold.clear && hold.released === undefined)
    .toSorted((a, b) => a.point.order - b.point.order);
  if (points.length === 0) return [];
  const undone = points.flatMap((hold) =>
    hold.checks.filter(({ state, released }) => state === 'undone' && released === undefined),
  );
  const again = [...new Map(undone.map(({ check }) => [check.id, check.text])).values()];
  const rest = again.length - mostChecks;
  const more = rest > 0 ? [`${say('and')} ${count(rest)} ${say('more')}`] : [];
  const named = [...again.slice(0, mostChecks).map(firstClause), ...more].join('; ');
  return [
    [{ kind: 'strong', text: `${say('Held')}: ` }, points.map(({ point }) => point.title).join('; ')],
    ...(again.length === 0 ? [] : [[{ kind: 'strong', text: `${say('Prove again')}: ` }, named] satisfies Text]),
  ];
}

/** The first clause of a check, so that a card holds several. */
function firstClause(text: string): string {
  return text.split(/[;:,]/u)[0] ?? text;
}

/** The words it was left with; once there are later records, with the day they are of. */
function wordsLeft({ book, say }: ViewContext): readonly Text[] {
  const [first, ...more] = book.off.stateLeft;
  if (first === undefined) return [];
  const texts = [first, ...more].map(({ text }) => text);
  const since = book.records.jobs.some((job) => hasHappened(job) && job.date.from > first.job.date.to);
  if (!since) return texts;
  return [[{ kind: 'strong', text: `${say('Left so')}, ${dayText(first.job.date.to)}: ` }, texts.join('; ')]];
}

function cards(context: ViewContext): CardsBlock {
  const { book, say } = context;
  const open = book.off.open.length;
  const all = cardLines(context);
  const warning: Text = [
    { kind: 'strong', text: `${say('Before you turn, start or move it')}: ` },
    `${countOf(open, say('thing is open'), say('things are open'))}.`,
  ];
  const none: Text = say('Nothing is off, loose, empty, disconnected, open or away, by the records.');
  const words = wordsLeft(context);
  const findings = gravestFindings(book, say).map(({ weight, saw }): Text => [
    { kind: 'strong', text: `${say('Found')}, ${weight}: ` },
    saw,
  ]);
  const ordered = partsIn(book, 'ordered').join('; ');
  const coming: readonly Text[] = ordered === '' ? [] : [[{ kind: 'strong', text: `${say('Ordered')}: ` }, ordered]];
  const lines = [
    ...(all.length === 0 ? [none] : [warning, ...all]),
    ...findings,
    ...words,
    ...coming,
    ...held(context),
  ];
  const next: Text = [{ kind: 'strong', text: `${say('Next')}: ` }, book.off.next?.text ?? say('not written down')];
  const foot = cardFoot(book);
  return {
    type: 'cards',
    size: { width: card.width, height: card.height },
    hole: true,
    cards: [{ title: say('State left in'), lines: [...lines, next], foot }],
  };
}
