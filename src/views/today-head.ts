// The head of a sheet that is filled in at the machine: date, reading of the clock with its unit, place, hand.
import type { Block } from '../sheet/sheet.ts';
import { column } from './wording/blocks.ts';
import { defineView } from './view.ts';

export const todayHead = defineView({
  id: 'today-head',
  purpose: 'Date, reading of the clock in its unit, place and hand, to be written in.',
  needs: 'machine',
  options: [],
  blocks: ({ book, say }): readonly Block[] => {
    const unit = book.records.machine.clock.at(-1)?.unit.symbol;
    const clock = unit === undefined ? say('On the clock, and unit') : `${say('On the clock')}, ${unit}`;
    return [
      {
        type: 'grid',
        id: 'today',
        columns: [column(say('Date'), 3), column(clock, 3), column(say('Where'), 3), column(say('Hand'), 3)],
        rows: 1,
      },
    ];
  },
});
