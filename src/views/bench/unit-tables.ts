// One of each unit of the trade in all units of its kind, for the reader without a script.
import { otherUnits } from '../../calc/other-units.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import { readQuantity } from '../../quantity/read-quantity.ts';
import { units } from '../../quantity/units.ts';
import type { Block } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { column, heading, row } from '../wording/blocks.ts';

/** The kinds that are read off a gauge or a book, and mistaken there. */
const kinds = [
  'torque',
  'length',
  'gauge pressure',
  'volume',
  'distance ridden',
] as const satisfies readonly Dimension[];

/** A heading and a table of a row for each unit. */
export function unitTables({ say }: ViewContext): readonly Block[] {
  return [
    heading(2, say('A value in other units'), 'units'),
    {
      type: 'table',
      columns: [column(say('One'), 3), column(say('Is'), 12)],
      rows: kinds.flatMap((kind) => [
        { kind: 'band' as const, text: say(kind.charAt(0).toUpperCase() + kind.slice(1)) },
        ...units[kind].flatMap((unit) => {
          const one = readQuantity(`1 ${unit.symbol}`, kind);
          if (!one.ok) return [];
          const [own, ...others] = otherUnits(one.value);
          return own === undefined ? [] : [row(own.same, others.map(({ same }) => same).join(' · '))];
        }),
      ]),
      empty: '',
      use: 'read',
    },
  ];
}
