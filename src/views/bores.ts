// Bores and pistons: what the newest readings come to for each cylinder, by the rule that is named, and what a rebore would need.
import type { Block, Cell } from '../sheet/sheet.ts';
import { column, heading, lines, row } from './wording/blocks.ts';
import { inlineFigure, resultText } from './wording/figure.ts';
import { bores as boresOf, commonRingGap } from './figures/bores.ts';
import type { NamedFigure } from './figures/figure-on.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const bores = defineView({
  id: 'bores',
  purpose: 'Taper, out-of-round, wear, clearance and the next oversize of each cylinder, with the rule used.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { book, plan } = context;
    const asked = plan === undefined || plan.blanks.some((blank) => blank.item === 'bore');
    return asked && boresOf(book).length > 0 ? blocks(context) : [];
  },
});

function cell(figures: readonly NamedFigure[]): Cell {
  return { text: figures.map(({ id, figure }) => ({ kind: 'figure', text: resultText(figure), to: `working:${id}` })) };
}

function blocks({ book, say }: ViewContext): readonly Block[] {
  const all = boresOf(book);
  const rule = all.find((one) => one.rule !== undefined)?.rule;
  return [
    heading(2, say('Bores and pistons, from the last readings'), 'bores'),
    {
      type: 'table',
      columns: [
        column(say('Cylinder'), 3),
        column(say('Taper'), 3, 'right'),
        column(say('Out-of-round'), 3, 'right'),
        column(say('Wear'), 3, 'right'),
        column(say('Clearance'), 3, 'right'),
        column(say('Next oversize'), 3, 'right'),
        column(say('Least bore that cleans up'), 3, 'right'),
      ],
      rows: all.map((one) =>
        row(
          one.cylinder,
          cell(one.taper),
          cell(one.round),
          cell(one.wear),
          cell(one.clearance),
          cell(one.oversize),
          cell(one.needed),
        ),
      ),
      empty: '',
      use: 'read',
    },
    lines([
      ...(rule === undefined
        ? []
        : [
            `${say('Taper and out-of-round')}: ${say(rule)}. ${say('No rule of the book is on record here, and makers differ.')}`,
          ]),
      say('Clearance: smallest bore less skirt. A maker’s rule goes before it: look on the page of the limit.'),
      say(
        'Oversize: from the standard bore of the machine, 0.05 mm a side to be bored and honed, common practice; the reborer has the last word.',
      ),
      ...commonRingGap(book).map(({ id, name, figure }) => [`${say(name)}: `, inlineFigure(figure, id)]),
    ]),
  ];
}
