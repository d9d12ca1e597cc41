// The odometer statement to be signed: the reading on the day, and one of the three words of such statements, ticked by who hands over.
import type { Block } from '../sheet/sheet.ts';
import { column, heading, paragraphs, row } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { distanceText } from './wording/distance.ts';
import { defineView } from './view.ts';

/** Words as 49 CFR 580.5 has them; no old machine falls under it, but they are the honest three everywhere. */
const choices = [
  { word: 'actual', means: 'to the best of my knowledge it is the distance that this machine has covered' },
  { word: 'exceeds mechanical limit', means: 'the clock has gone past its digits and begun again; more than it shows' },
  { word: 'not actual', means: 'WARNING: do not rely on it; the clock does not show what the machine has covered' },
] as const;

export const odometerDeclared = defineView({
  id: 'odometer-declared',
  purpose: 'The reading on the day and the three words of an odometer statement, to tick and sign.',
  needs: 'machine',
  options: [],
  blocks: ({ book, say }): readonly Block[] => {
    const { statement, now } = book.odometer;
    const unit = now.clock?.unit.symbol ?? '';
    const last =
      now.job === undefined
        ? say('The clock reads; no reading is in the records')
        : `${say('The clock reads; last in the records')}: ${distanceText(say, now) ?? ''}, ${dayText(now.day)}`;
    return [
      heading(2, say('Stated on the day'), 'stated-on-the-day'),
      {
        type: 'table',
        columns: [
          column('', 1, 'centre'),
          column(say('The reading is'), 4),
          column(say('That is'), 8),
          column(say('By the records'), 3),
        ],
        rows: choices.map(({ word, means }) =>
          row(
            { box: 'tick' },
            [{ kind: 'strong', text: say(word) }],
            say(means),
            word === statement.word ? say('this one') : '',
          ),
        ),
        empty: '',
        use: 'work',
      },
      {
        type: 'table',
        columns: [column('', 6), column(say('On the day'), 4)],
        rows: [row(last, { box: 'write', unit })],
        empty: '',
        use: 'work',
      },
      paragraphs(
        say(
          'Who has good reason to think that it is wrong says so; “may be” is not enough. Local law may ask for a form of its own.',
        ),
      ),
    ];
  },
});
