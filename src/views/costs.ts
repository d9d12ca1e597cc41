// What it has cost: the sum in one currency, by group and by year, every entry as it was paid, and what the sum leaves out.
import type { Costs } from '../book/book.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { costFacts } from './cost-facts.ts';
import { costYears } from './cost-years.ts';
import { column, heading, lines, paragraphs, row, stack } from './wording/blocks.ts';
import { capped, olderByYear, olderOnes } from './wording/capped.ts';
import { dayText, spanText, yearOf } from './wording/day.ts';
import { jobTitle, withJobs } from './wording/job.ts';
import { moneyPlot } from './wording/money-plot.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const costs = defineView({
  id: 'costs',
  purpose:
    'Money spent by group, by year and entry by entry, with what is to come, the limit, and what the sum leaves out.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const { book, say, options } = context;
    const whole = options['of'] !== 'sums';
    return stack(
      sums(context, whole),
      moneyPlot(say, book.costs),
      whole ? [heading(2, say('Entries'), 'entries'), costTable(context, costEntries(context))] : undefined,
    );
  },
});

function sums(context: ViewContext, whole: boolean): readonly Block[] {
  const { book, say } = context;
  const { leftOut } = book.costs;
  return stack(
    costFacts(context),
    tables(context, whole),
    leftOut.length === 0
      ? undefined
      : [heading(3, say('Left out of the sums'), 'left-out'), lines(leftOut.map((text) => withJobs(book, text)))],
  );
}

/** By group and by year. Where nothing is recorded the entries say so, and where there are none of them one line does. */
function tables(context: ViewContext, whole: boolean): readonly Block[] {
  const { book, say } = context;
  if (book.costs.entries.length === 0) return whole ? [] : [paragraphs(say('No money is recorded.'))];
  return [
    {
      type: 'table',
      columns: [column(say('Group'), 6), column(say('Sum'), 3, 'right')],
      rows: book.costs.byGroup.map((one) => row(one.group, formatMoney(one.total))),
      empty: say('No money is recorded.'),
      use: 'read',
    },
    costYears(context),
  ];
}

type Entry = Costs['entries'][number];

/** Every entry, newest first. */
export function costEntries({ book }: ViewContext): readonly Entry[] {
  return book.costs.entries.toSorted((one, other) => (one.day === other.day ? 0 : one.day < other.day ? 1 : -1));
}

/** The table of these entries; where a page shows only so many rows, its years lead to the others. */
export function costTable({ say, rows }: ViewContext, entries: readonly Entry[]): Block {
  const years = entries.map(({ day }) => yearOf(day));
  const telling = rows === undefined ? (rest: number) => olderOnes(say, rest) : olderByYear(say, 'costs', years);
  const otherwise = entries.some((one) => paidOtherwise(one) !== '');
  return {
    type: 'table',
    columns: [
      column(say('Date'), 3),
      column(say('For'), 6),
      column(say('Kind'), 3),
      column(say('Counted'), 3, 'right'),
      ...(otherwise ? [column(say('Paid as'), 3, 'right')] : []),
      column(say('Record'), 5),
    ],
    rows: capped(entries, telling, rows).map((one) => ('kind' in one ? one : entryRow(say, one, otherwise))),
    empty: say('No money is recorded.'),
    use: 'read',
  };
}

/** The amount as it was paid, where the sum counts it otherwise: in another currency, or not at all. What came back counts with a minus only. */
function paidOtherwise({ entry, inOwn }: Entry): string {
  const amount = 'part' in entry ? entry.price : entry.amount;
  if (amount === undefined) return '';
  const same = inOwn?.currency === amount.currency && Math.abs(inOwn.minor) === Math.abs(amount.minor);
  return same ? '' : formatMoney(amount);
}

function entryRow(say: (words: string) => string, one: Entry, otherwise: boolean): Row {
  const { job, day, entry, inOwn, committed } = one;
  const date = job === undefined ? dayText(day) : spanText(job.date);
  const where = job === undefined ? say('shared, in workshop.yaml') : [jobTitle(job)];
  const sum = inOwn === undefined ? say('not counted') : formatMoney(inOwn);
  const money = otherwise ? [sum, paidOtherwise(one)] : [sum];
  if ('part' in entry) {
    return row(date, entry.part, committed === true ? say('part, not here yet') : say('part'), ...money, where);
  }
  return row(date, entry.for, committed === true ? say('agreed, still to pay') : say(entry.kind), ...money, where);
}
