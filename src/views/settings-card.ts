// The settings card: what is asked for by the roadside on the front, mixture in other air on the back, side by side to be folded.
import type { CardsBlock, Text } from '../sheet/sheet.ts';
import { airLines } from './pocket-card.ts';
import { cardFoot } from './wording/records-up-to.ts';
import { valueText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const card = { width: 86, height: 54 } as const;

/** So many letters fill one side of the card; what does not go on it stands on a second one. */
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
    const [first = say('No setting is recorded.'), ...more] = fronts(context);
    const front = (settings: Text): Card => ({ title: say('Settings'), lines: [settings], foot });
    const further = more.map((settings) => ({ ...front(settings), title: say('Settings, continued') }));
    const notes: Card = { title: say('Notes'), lines: [], foot };
    const air: Card = { title: say('Other air'), lines: back.length === 0 ? [none] : back, foot };
    return [
      {
        type: 'cards',
        size: { width: card.width, height: card.height },
        hole: false,
        small: true,
        // Each front has a back beside it: a second card is folded like the first.
        cards: [front(first), air, ...further, ...(further.length % 2 === 0 ? [] : [notes])],
      },
    ];
  },
});

type Card = CardsBlock['cards'][number];

/** The settings as they fill one side after the other. */
function fronts({ book, say }: ViewContext): readonly Text[] {
  const rank = (name: string): number => asked.findIndex((word) => name.toLowerCase().includes(word));
  const wanted = book.records.maker.settings
    .filter(({ name }) => rank(name) >= 0)
    .toSorted((one, other) => rank(one.name) - rank(other.name));
  const sides: Setting[][] = [];
  let letters = mostLetters;
  for (const { name, value } of wanted) {
    const one = { name, text: valueText(value) ?? say('not known') };
    const length = one.name.length + one.text.length + 4;
    if (letters + length > mostLetters) sides.push([]);
    letters = letters + length > mostLetters ? length : letters + length;
    sides.at(-1)?.push(one);
  }
  return sides.map((side) =>
    side.flatMap(({ name, text }, index) => [`${index === 0 ? '' : ' · '}${name} `, { kind: 'strong' as const, text }]),
  );
}

interface Setting {
  readonly name: string;
  readonly text: string;
}
