// Tool setting with an extension in line with the wrench: what to set for each ten that are wanted, by length of wrench and extension.
import { calculationById } from '../calc/list.ts';
import type { Figure } from '../figure/figure.ts';
import { printFigure, written } from '../figure/print.ts';
import type { Dimension } from '../quantity/quantity.ts';
import { readQuantity } from '../quantity/read-quantity.ts';
import type { Block } from '../sheet/sheet.ts';
import { column, heading, lines, row } from './wording/blocks.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const wrenchAdaptor = defineView({
  id: 'wrench-adaptor',
  purpose: 'What to set on the wrench when an extension or crowfoot lengthens it.',
  needs: 'machine',
  options: [],
  blocks: (context) => blocks(context),
});

const sizes = {
  metric: {
    wanted: '10\u00a0N·m',
    wrenches: ['250\u00a0mm', '350\u00a0mm', '450\u00a0mm', '600\u00a0mm'],
    extensions: ['25\u00a0mm', '50\u00a0mm', '75\u00a0mm', '100\u00a0mm'],
  },
  imperial: {
    wanted: '10\u00a0lbf·ft',
    wrenches: ['10\u00a0in', '14\u00a0in', '18\u00a0in', '24\u00a0in'],
    extensions: ['1\u00a0in', '2\u00a0in', '3\u00a0in', '4\u00a0in'],
  },
} as const;

function figureOf(text: string, dimension: Dimension): Figure | undefined {
  const read = readQuantity(text, dimension);
  return read.ok ? written(read.value, { file: 'content/sheets/torque-table.md', path: [] }, 'the table') : undefined;
}

function setting(wanted: string, wrench: string, extension: string): string {
  const [torque, length, added] = [
    figureOf(wanted, 'torque'),
    figureOf(wrench, 'length'),
    figureOf(extension, 'length'),
  ];
  const set = calculationById('wrench-setting')?.run({ torque, length, extension: added }).figures['setting'];
  return set === undefined ? '' : printFigure({ ...set, decimals: 1 });
}

function blocks({ book, say }: ViewContext): readonly Block[] {
  const { wanted, wrenches, extensions } = sizes[book.records.machine.units];
  return [
    heading(2, say('With an extension or crowfoot on the wrench'), 'adaptor'),
    {
      type: 'table',
      columns: [
        column(say('Wrench, drive to middle of grip'), 4),
        ...extensions.map((extension) => column(`${say('Extension')} ${extension}`, 3, 'right')),
      ],
      rows: wrenches.map((wrench) => row(wrench, ...extensions.map((one) => setting(wanted, wrench, one)))),
      empty: '',
      use: 'read',
    },
    lines([
      `${say('Set this for each')} ${wanted} ${say('wanted at the nut, extension in line with the wrench: T · L/(L + E), E from the drive to the middle of the nut.')}`,
      say(
        'At right angles to the wrench nothing changes; a socket extension along the axis changes nothing either. A nut that drags on its thread: add what turns it freely.',
      ),
      [
        `${say('Other lengths and angles')}: `,
        { kind: 'link', text: say('setting of the torque wrench'), to: 'page:calculations/wrench-setting.html' },
        '.',
      ],
    ]),
  ];
}
