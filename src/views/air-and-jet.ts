// Mixture by altitude and temperature for the settings sheet: how much richer it runs there, and the nearest main jet where one is recorded.
import { printFigure } from '../figure/print.ts';
import type { Block, Text } from '../sheet/sheet.ts';
import { column, heading, lines, row } from './wording/blocks.ts';
import { airTable } from './figures/air.ts';
import type { AirCell, AirTable } from './figures/air.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const airAndJet = defineView({
  id: 'air-and-jet',
  purpose: 'Mixture by altitude and temperature, and the nearest main jet in both systems of numbering.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const air = airTable(context.book);
    return air === undefined ? [] : blocks(context, air);
  },
});

/** `+4 %`: the sign always stands. */
export function richerText({ richer }: AirCell): string {
  const text = printFigure(richer);
  return richer.quantity > 0 && !text.startsWith('0') ? `+${text}` : text;
}

function cellText(cell: AirCell): string {
  const jets = [cell.bore, cell.flow].flatMap((jet) => (jet === undefined ? [] : [printFigure(jet)]));
  return [richerText(cell), ...jets].join(' · ');
}

function blocks({ say }: ViewContext, air: AirTable): readonly Block[] {
  const first = air.rows[0]?.cells ?? [];
  const jet = air.jet === undefined ? undefined : printFigure(air.jet);
  const jetted = `${say('Taken as jetted')} ${say('at')} ${printFigure(air.home)}, ${printFigure(air.mild)}`;
  const link: Text = [
    `${say('How it is worked out')}: `,
    { kind: 'link', text: say('main jet for other air'), to: 'page:calculations/jet-change.html' },
    ', ',
    { kind: 'link', text: say('mixture in other air'), to: 'page:calculations/mixture-shift.html' },
    '.',
  ];
  return [
    heading(2, say('Mixture in other air'), 'air'),
    {
      type: 'table',
      columns: [
        column(say('Altitude'), 3, 'right'),
        ...first.map((cell) => column(printFigure(cell.temperature), 4, 'right')),
      ],
      rows: air.rows.map((one) => row(printFigure(one.altitude), ...one.cells.map(cellText))),
      empty: '',
      use: 'read',
    },
    lines([
      jet === undefined
        ? `${jetted}. ${say('In each field: richer by. No main jet with a number is recorded.')}`
        : `${jetted}, ${say('with main jet')} ${jet}. ${say('In each field: richer by · jet if its number is the bore in hundredths of a millimetre · jet if its number goes with the flow.')}`,
      say(
        'At wide throttle, half humidity. Jets to the steps they come in; one step is seldom worth the trouble. The plug has the last word, and weak is what seizes.',
      ),
      link,
    ]),
  ];
}
