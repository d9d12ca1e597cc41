// Numbers character by character: a square for each, read twice, before they are compared with what the records say.
import type { Block } from '../sheet/sheet.ts';
import { column, heading, joined, lines, paragraphs, sentence } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** A number of this trade is shorter; a number of seventeen takes both rows. */
const squares = 12;
const asked = ['frame', 'engine'] as const;

export const characterGrid = defineView({
  id: 'character-grid',
  purpose: 'Frame and engine number, a square for each character, read by two people or twice.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => {
    const { say } = context;
    return [
      heading(2, say('Numbers, as stamped'), 'numbers-as-stamped'),
      lines([
        say('Read the metal, not the paper; then read it again. Every stroke counts: 0 or O, 1 or I, 5 or S, 8 or B.'),
        say('More than twelve characters go on in the second row.'),
      ]),
      ...asked.flatMap((name) => numberGrid(context, name)),
    ];
  },
});

function numberGrid({ book, say }: ViewContext, name: string): readonly Block[] {
  const known = book.records.machine.numbers.find((number) => number.name === name);
  const stamped = known === undefined || known.private || known.stamped === '?' ? undefined : known.stamped;
  return [
    {
      type: 'grid',
      id: `number/${name}`,
      rowsAsk: [say('first reading'), say('second reading')].map((turn) =>
        sentence(`${say(`${name} number`)}, ${turn}`),
      ),
      caption: sentence(`${say(`${name} number`)}: ${say('first reading, second reading')}`),
      columns: Array.from({ length: squares }, (_, index) => column(count(index + 1), 1, 'centre')),
      rows: 2,
    },
    ...(stamped === undefined
      ? []
      : [paragraphs(joined([`${say('In the records')}: ${stamped}`, say('compare after reading, not before')]))]),
  ];
}
