// Money of a record: what was paid and come back, for what, in its own currency.
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { Job } from '../../records/model.ts';
import type { Block } from '../../sheet/sheet.ts';
import { column, heading, row } from '../wording/blocks.ts';
import type { ViewContext } from '../view.ts';

/** A table of the money, or nothing. */
export function jobMoney({ say }: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.money.length === 0) return [];
  return [
    heading(3, say('Money'), `${within}money`),
    {
      type: 'table',
      columns: [
        column(say('What'), 2),
        column(say('For'), 6),
        column(say('Group'), 3),
        column(say('Amount'), 3, 'right'),
      ],
      rows: job.money.map((one) => row(say(one.kind), one.for, one.group, formatMoney(one.amount))),
      empty: '',
      use: 'read',
    },
  ];
}
