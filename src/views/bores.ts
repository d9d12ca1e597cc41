// Bores and pistons: what the newest readings come to for each cylinder, by the rule that is named, and what a rebore would need.
import { sourceLine } from '../book/torque.ts';
import type { Block, Cell } from '../sheet/sheet.ts';
import { column, heading, lines, row } from './wording/blocks.ts';
import { inlineFigure, resultText } from './wording/figure.ts';
import { bores as boresOf, commonRingGap } from './figures/bores.ts';
import type { BoreFigures } from './figures/bores.ts';
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

/** A column for each figure; one that no cylinder has is left out. */
const parts: readonly { readonly head: string; readonly of: (one: BoreFigures) => readonly NamedFigure[] }[] = [
  { head: 'Taper', of: (one) => one.taper },
  { head: 'Out-of-round', of: (one) => one.round },
  { head: 'Wear', of: (one) => one.wear },
  { head: 'Clearance', of: (one) => one.clearance },
  { head: 'Next oversize', of: (one) => one.oversize },
  { head: 'Least bore that cleans up', of: (one) => one.needed },
];

function blocks({ book, say }: ViewContext): readonly Block[] {
  const all = boresOf(book);
  const shown = parts.filter(({ of }) => all.some((one) => of(one).length > 0));
  const rule = all.find((one) => one.rule !== undefined)?.rule;
  const limit = book.limits.get('bore');
  const ofBook = limit?.rule === undefined ? undefined : limit;
  return [
    heading(2, say('Bores and pistons, from the last readings'), 'bores'),
    {
      type: 'table',
      columns: [column(say('Cylinder'), 3), ...shown.map(({ head }) => column(say(head), 3, 'right'))],
      rows: all.map((one) => row(one.cylinder, ...shown.map(({ of }) => cell(of(one))))),
      empty: '',
      use: 'read',
    },
    lines([
      ...(rule === undefined
        ? []
        : [
            `${say('Taper and out-of-round')}: ${say(rule)}. ${ofBook === undefined ? say('No rule of the book is on record here, and makers differ.') : `${say('The rule of the book')}: ${sourceLine(ofBook.source)}.`}`,
          ]),
      say('Clearance: smallest bore less skirt. A maker’s rule goes before it: look on the page of the limit.'),
      say(
        'Oversize: from the standard bore of the machine, 0.05 mm a side to be bored and honed, common practice; the reborer has the last word.',
      ),
      ...commonRingGap(book).map(({ id, name, figure }) => [`${say(name)}: `, inlineFigure(figure, id)]),
    ]),
  ];
}
