// The settings card: what is asked for by the roadside on the front, mixture in other air on the back, side by side to be folded.
import type { CardsBlock, Text } from '../sheet/sheet.ts';
import { airLines } from './pocket-card.ts';
import { cardFoot } from './wording/records-up-to.ts';
import { valueText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const card = { width: 86, height: 54 } as const;

/** So many letters fill one side of the card; what is asked for last is left off, and the card has no second front. */
const mostLetters = 400;

/** What is looked up away from home, in the order of asking. */
const asked = [
  'plug',
  'points',
  'timing',
  'valve',
  'tappet',
  'jet',
  'needle',
  'air screw',
  'idle',
  'tyre',
  'chain',
  'petrol',
  'premix',
];

export const settingsCard = defineView({
  id: 'settings-card',
  purpose: 'A card as large as a bank card: settings on the front, mixture in other air on the back.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly CardsBlock[] => {
    const { book, say } = context;
    const foot = cardFoot(book);
    const back = airLines(context);
    const none: Text = say('The altitude of its place is not recorded: no table for other air.');
    return [
      {
        type: 'cards',
        size: { width: card.width, height: card.height },
        hole: false,
        small: true,
        cards: [
          { title: say('Settings'), lines: [settingsText(context)], foot },
          { title: say('Other air'), lines: back.length === 0 ? [none] : back, foot },
        ],
      },
    ];
  },
});

function settingsText({ book, say }: ViewContext): Text {
  const rank = (name: string): number => asked.findIndex((word) => name.toLowerCase().includes(word));
  const wanted = book.records.maker.settings
    .filter(({ name }) => rank(name) >= 0)
    .toSorted((one, other) => rank(one.name) - rank(other.name));
  if (wanted.length === 0) return say('No setting is recorded.');
  const told = wanted.map(({ name, value }) => ({ name, text: valueText(value) ?? say('not known') }));
  let letters = 0;
  const fitting = told.filter(({ name, text }) => {
    letters += name.length + text.length + 4;
    return letters <= mostLetters;
  });
  return fitting.flatMap(({ name, text }, index) => [
    `${index === 0 ? '' : ' · '}${name} `,
    { kind: 'strong' as const, text },
  ]);
}
