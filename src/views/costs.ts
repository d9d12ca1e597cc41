// What it has cost: the sum in one currency, by group and by year, every entry as it was paid, and what the sum leaves out.
import type { Costs } from '../book/book.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { costFacts } from './cost-facts.ts';
import { costYears } from './cost-years.ts';
import { column, heading, lines, row, stack } from './wording/blocks.ts';
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
      sums(context),
      moneyPlot(say, book.costs),
      whole ? [heading(2, say('Entries'), 'entries'), costTable(context, costEntries(context))] : undefined,
    );
  },
});

function sums(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const { byGroup, leftOut } = book.costs;
  return stack(
    costFacts(context),
    sumTable(
      say('Group'),
      say('Sum'),
      byGroup.map((one) => row(one.group, formatMoney(one.total))),
      say('No money is recorded.'),
    ),
    costYears(context),
    leftOut.length === 0
      ? undefined
      : [heading(3, say('Left out of the sums'), 'left-out'), lines(leftOut.map((text) => withJobs(book, text)))],
  );
}

function sumTable(first: string, second: string, rows: readonly Row[], empty: string): Block {
  return { type: 'table', columns: [column(first, 6), column(second, 3, 'right')], rows, empty, use: 'read' };
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
  return {
    type: 'table',
    columns: [
      column(say('Date'), 3),
      column(say('For'), 6),
      column(say('Kind'), 3),
      column(say('As paid'), 3, 'right'),
      column(say('Counted'), 3, 'right'),
      column(say('Record'), 5),
    ],
    rows: capped(entries, telling, rows).map((one) => ('kind' in one ? one : entryRow(say, one))),
    empty: say('No money is recorded.'),
    use: 'read',
  };
}

function entryRow(say: (words: string) => string, { job, day, entry, inOwn, committed }: Entry): Row {
  const own = inOwn === undefined ? say('not counted') : formatMoney(inOwn);
  const date = job === undefined ? dayText(day) : spanText(job.date);
  const where = job === undefined ? say('shared, in workshop.yaml') : [jobTitle(job)];
  if ('part' in entry) {
    const price = entry.price === undefined ? '' : formatMoney(entry.price);
    return row(date, entry.part, committed === true ? say('part, not here yet') : say('part'), price, own, where);
  }
  const kind = committed === true ? say('agreed, still to pay') : say(entry.kind);
  return row(date, entry.for, kind, formatMoney(entry.amount), own, where);
}
