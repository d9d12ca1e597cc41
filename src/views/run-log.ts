// The run log of a first start: what was written, then an empty grid, a line a minute.
import type { Block } from '../sheet/sheet.ts';
import { column, heading } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { defineView } from './view.ts';

export const runLog = defineView({
  id: 'run-log',
  purpose: 'An empty grid to write a run in, a line a minute.',
  needs: 'machine',
  options: ['of'],
  blocks: ({ say, options }): readonly Block[] => {
    // As many minutes as fit on one side with the foot to be signed; on the leaf for the bike, beside the mixing table.
    const rows = options['of'] === 'long' ? 13 : 5;
    const heads = ['Choke', 'Throttle', 'Feel and sound', 'Smoke', 'Leak', 'Note'];
    return [
      ...(options['of'] === 'long' ? [] : [heading(2, say('Run log'), 'run-log')]),
      {
        type: 'grid',
        id: 'run-log',
        caption: say('Kicks counted before it fires, then a line a minute.'),
        columns: [
          column(say('Minute'), 1, 'right'),
          ...heads.map((head) => column(say(head), head === 'Note' ? 4 : 2)),
        ],
        rows,
        filled: Array.from({ length: rows }, (_, index) => [count(index)]),
      },
      {
        type: 'grid',
        id: 'run-end',
        columns: [
          column(say('Kicks to the first fire'), 2),
          column(say('Stopped because'), 4),
          column(say('What next'), 4),
          column(say('Heat cycle no.'), 2),
        ],
        rows: 1,
      },
    ];
  },
});
