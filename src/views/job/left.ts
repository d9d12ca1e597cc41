// What a record that was put aside left behind: everything that was off, loose, empty or open on that evening, and in which bag.
import { offAfter } from '../../book/off-at.ts';
import type { Job } from '../../records/model.ts';
import type { Block } from '../../sheet/sheet.ts';
import { column, heading, row } from '../wording/blocks.ts';
import { dayText } from '../wording/day.ts';
import { workParticulars, workThing } from '../wording/work.ts';
import type { ViewContext } from '../view.ts';

/** Only of a record that was put aside or waits: of any other, the next record tells. */
export function jobLeft({ book, say }: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.state !== 'put aside' && job.state !== 'waiting') return [];
  const { open } = offAfter(book, job);
  if (open.length === 0) return [];
  return [
    heading(3, say('Off, loose, empty or open when it was left'), `${within}left`),
    {
      type: 'table',
      columns: [
        column(say('What'), 4),
        column(say('State'), 3),
        column(say('Particulars'), 6),
        column(say('Since'), 3),
      ],
      rows: open.map((line) =>
        row(workThing(book, line.entry), say(line.state), workParticulars(book, say, line.entry), dayText(line.since)),
      ),
      empty: '',
      use: 'read',
    },
  ];
}
