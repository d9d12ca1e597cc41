// The card on the handlebars: what is loose, drained, disconnected, open, away or temporary, and the next step.
import type { OpenLine } from '../book/book.ts';
import type { CardsBlock, Text } from '../sheet/sheet.ts';
import { countOf } from './wording/count.ts';
import { cardFoot } from './wording/records-up-to.ts';
import { workParticulars, workThing } from './wording/work.ts';
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
      const more = workParticulars(book, say, line.entry);
      const thing = workThing(book, line.entry);
      return [{ kind: 'strong', text: `${say(state)}: ` }, more === '' ? thing : `${thing} (${more})`];
    });
  });
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
  const words = book.off.stateLeft.map(({ text }): Text => text);
  const findings = gravestFindings(book, say).map(({ weight, saw }): Text => [
    { kind: 'strong', text: `${say('Found')}, ${weight}: ` },
    saw,
  ]);
  const lines = [...(all.length === 0 ? [none] : [warning, ...all]), ...findings, ...words];
  const next: Text = [{ kind: 'strong', text: `${say('Next')}: ` }, book.off.next?.text ?? say('not written down')];
  const foot = cardFoot(book);
  return {
    type: 'cards',
    size: { width: card.width, height: card.height },
    hole: true,
    cards: [{ title: say('State left in'), lines: [...lines, next], foot }],
  };
}
