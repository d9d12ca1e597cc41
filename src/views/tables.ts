// The published tables that calculations use: title, edition, how obtained, and the very rows that the code is tested against.
import { cellText } from '../table/cell-decimals.ts';
import { table, tableIds } from '../table/table.ts';
import type { Block } from '../sheet/sheet.ts';
import { column, fact, heading, row } from './wording/blocks.ts';
import { asSet } from './wording/published-unit.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const tables = defineView({
  id: 'tables',
  purpose: 'Published tables with their rows; one of them where `of` names it.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const wanted = context.options['of'];
    return tableIds.filter((id) => wanted === undefined || id === wanted).flatMap((id) => tableBlocks(context, id));
  },
});

/** One table with what stands above it. */
export function tableBlocks({ say }: ViewContext, id: string): readonly Block[] {
  const { about, columns, rows } = table(id);
  return [
    heading(2, say(about.title), id),
    {
      type: 'facts',
      facts: [
        ...fact(say('Edition'), about.edition),
        ...fact(say('Number'), about.number),
        ...fact(say('How obtained'), about.obtained),
        ...fact(say('Units'), about.units),
        ...fact(say('Used for'), about.use),
        ...fact(say('Remarks'), about.remarks),
      ],
    },
    {
      type: 'table',
      columns: columns.map(({ name, unit }, at) => {
        const numbers = unit !== '' || (at > 0 && rows.every(({ cells }) => isNumber(cells[name] ?? '')));
        return column(unit === '' ? name : `${name}, ${asSet(unit)}`, 3, numbers ? 'right' : 'left');
      }),
      rows: rows.map((one) =>
        row(
          ...columns.map(({ name, unit }) => {
            const cell = one.cells[name] ?? '';
            return unit === '' ? asSet(cell) : cellText(cell);
          }),
        ),
      ),
      empty: say('This table has no rows.'),
      use: 'read',
    },
  ];
}

/** Whether a cell has nothing but a number, or nothing. */
function isNumber(cell: string): boolean {
  return /^(?:[-−]?\d+(?:\.\d+)?)?$/u.test(cell);
}
