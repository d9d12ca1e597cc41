// Off and on over time: how much was open on each day, and every thing with the day it came off and the day it was on again.
import type { ClosedLine, OpenLine } from '../book/book.ts';
import { dayNumber } from '../quantity/day-arithmetic.ts';
import type { Block, PlotBlock, Row, Text } from '../sheet/sheet.ts';
import { column, heading, joined, row, stack } from './wording/blocks.ts';
import { capped, olderByYear, olderOnes } from './wording/capped.ts';
import { count } from './wording/count.ts';
import { yearOf } from './wording/day.ts';
import { jobNamed } from './wording/job.ts';
import { workThing } from './wording/work.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const offOverTime = defineView({
  id: 'off-over-time',
  purpose: 'How many things were off, loose, empty or open by date, and when each was closed again.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => {
    const { book, say } = context;
    if (book.off.open.length + book.off.closed.length === 0) return [];
    return stack(
      heading(2, say('Off and on over time'), 'off-and-on'),
      plot(context),
      offTable(context, offLines(context)),
    );
  },
});

/** Steps from day to day: what was open before the work of a day, and after it. */
function plot({ book, say }: ViewContext): PlotBlock | undefined {
  const changes = new Map<number, number>();
  const add = (day: number, by: number): void => void changes.set(day, (changes.get(day) ?? 0) + by);
  for (const { since } of [...book.off.open, ...book.off.closed]) add(dayNumber(since), 1);
  for (const { byJob } of book.off.closed) add(dayNumber(byJob.date.from), -1);
  const days = [...changes].filter(([, by]) => by !== 0).toSorted(([one], [other]) => one - other);
  if (days.length < 2) return undefined;
  let open = 0;
  const points = days.flatMap(([x, by]) => {
    const before = { x, y: open };
    open += by;
    return [before, { x, y: open, label: count(open) }];
  });
  const now = { x: dayNumber(book.today), y: open };
  return {
    type: 'plot',
    title: say('Things open at a time'),
    description: say(
      'How many things were off, loose, empty, disconnected, open or away, by date; the table below has each.',
    ),
    x: { label: say('date'), kind: 'day' },
    y: { label: say('things') },
    series: [{ name: say('open'), mark: 'dot', line: 'solid', points: [...points, now] }],
    limits: [],
  };
}

/** Everything that was off at some time, what came off last first. */
export function offLines({ book }: ViewContext): readonly (OpenLine | ClosedLine)[] {
  return [...book.off.open, ...book.off.closed].toSorted((one, other) =>
    one.since === other.since ? 0 : one.since < other.since ? 1 : -1,
  );
}

/** The table of these; where a page shows only so many rows, its years lead to the others. */
export function offTable({ book, say, rows }: ViewContext, all: readonly (OpenLine | ClosedLine)[]): Block {
  const years = all.map(({ since }) => yearOf(since));
  const telling = rows === undefined ? (rest: number) => olderOnes(say, rest) : olderByYear(say, 'off', years);
  return {
    type: 'table',
    columns: [column(say('What'), 5), column(say('State'), 3), column(say('From'), 5), column(say('Closed again'), 5)],
    rows: capped(all, telling, rows).map((line) => ('kind' in line ? line : rowOf(book, say, line))),
    empty: '',
    use: 'read',
  };
}

function rowOf(book: ViewContext['book'], say: ViewContext['say'], line: OpenLine | ClosedLine): Row {
  const bag = line.entry.bag === undefined ? undefined : `${say('bag')} ${line.entry.bag}`;
  return row(
    workThing(book, line.entry),
    joined([say(line.state), bag], ', '),
    jobNamed(line.job),
    closedText(say, line),
  );
}

/** What came off and went on again in one piece of work says so, and does not name it twice. */
function closedText(say: ViewContext['say'], line: OpenLine | ClosedLine): Text {
  if (!('byJob' in line)) return [{ kind: 'strong', text: say('still open') }];
  return line.byJob === line.job ? say('in the same record') : jobNamed(line.byJob);
}
