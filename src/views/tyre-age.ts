// Tyres for the inspection: the marking, the date code as read, when that is, and how old it makes the tyre.
import type { Block, Cell } from '../sheet/sheet.ts';
import { column, heading, lines, row } from './wording/blocks.ts';
import { resultText } from './wording/figure.ts';
import { tyres } from './figures/tyres.ts';
import type { NamedFigure } from './figures/figure-on.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const tyreAge = defineView({
  id: 'tyre-age',
  purpose: 'Marking, date code and age of each tyre, with a blank where the code was not read.',
  needs: 'machine',
  options: [],
  blocks: (context) => (tyres(context.book).length === 0 ? [] : blocks(context)),
});

function cell(figures: readonly NamedFigure[]): Cell {
  return { text: figures.map(({ id, figure }) => ({ kind: 'figure', text: resultText(figure), to: `working:${id}` })) };
}

function blocks({ book, say }: ViewContext): readonly Block[] {
  const all = tyres(book);
  const treads = all.some((one) => one.tread.length > 0);
  return [
    heading(2, say('Tyres by their marking'), 'tyres'),
    {
      type: 'table',
      columns: [
        column(say('Wheel'), 2),
        column(say('Marking'), 3),
        column(say('Date code'), 3),
        column(say('Made'), 4),
        column(say('Age'), 3, 'right'),
        column(say('Nominal diameter'), 3, 'right'),
        ...(treads ? [column(say('Tread over the rule'), 3, 'right')] : []),
      ],
      rows: all.map((one) =>
        row(
          say(one.wheel),
          one.marking ?? '',
          one.code ?? { box: 'line', id: `tyre-code/${one.wheel}` },
          one.made === undefined ? '' : say(one.made),
          cell(one.age),
          cell(one.diameter),
          ...(treads ? [cell(one.tread)] : []),
        ),
      ),
      empty: '',
      use: 'work',
    },
    lines([
      ...new Set(all.flatMap((one) => one.remarks.map(say))),
      say(
        'Four digits are week and year since 2000; three leave the decade open. Rubber ages whether it rolls or not: the look decides, cracks in the sidewall first.',
      ),
    ]),
  ];
}
