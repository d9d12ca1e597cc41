// Oil in the petrol for a small temporary supply, in millilitres, at the ratio of the settings; with its working.
import type { Block } from '../sheet/sheet.ts';
import { printFigure } from '../figure/print.ts';
import { column, heading, joined, paragraphs, row } from './wording/blocks.ts';
import { inlineFigure } from './wording/figure.ts';
import { oilForFuel, premixSetting } from './wording/oil-for-fuel.ts';
import { valueText } from './wording/value.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const oilInFuel = defineView({
  id: 'oil-in-fuel',
  purpose: 'Millilitres of oil in a small temporary supply of petrol, at the ratio in the settings.',
  needs: 'machine',
  options: [],
  blocks: (context) => (context.book.records.machine.features.stroke === 'two' ? blocks(context) : []),
});

function blocks(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const setting = premixSetting(book);
  const mixes = oilForFuel(book);
  // Without a figure to mix by, nothing is said of a ratio either.
  const ratio = mixes.length === 0 ? undefined : valueText(setting?.value);
  const pump = book.records.machine.features.lubrication === 'pump';
  return [
    heading(2, say('Oil in the petrol of the temporary supply'), 'oil-in-fuel'),
    paragraphs(
      joined(
        [
          ratioText(context, ratio),
          pump
            ? say(
                'The oil goes into the petrol, pump or no pump, until the pump is proved: its lines hold air after years.',
              )
            : undefined,
        ],
        ' ',
      ),
    ),
    {
      type: 'table',
      columns: [
        column(say('Petrol'), 3, 'right'),
        column(say('Oil'), 3, 'right'),
        column(say('Mixed'), 2, 'centre'),
        column(say('Date, by'), 5),
      ],
      rows: mixes.map((mix) =>
        row(
          { text: printFigure(mix.fuel), big: true },
          { text: [inlineFigure(mix.oil, `oil-${mix.id}`)], big: true },
          { box: 'tick', id: `oil-in-fuel/${mix.id}` },
          { box: 'line' },
        ),
      ),
      empty: say(
        'The ratio is not known: write it in the maker’s settings under the id premix. Do not start it without.',
      ),
      use: 'work',
    },
  ];
}

function ratioText({ say }: ViewContext, ratio: string | undefined): string | undefined {
  if (ratio === undefined) return undefined;
  return `${say('At')} ${ratio} ${say('by volume, parts of petrol to one of oil, from the settings.')}`;
}
