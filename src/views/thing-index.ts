// The index of a history: every thing that was worked on, read or fitted, by its name, with the records that name it.
import type { Job } from '../records/model.ts';
import type { Block, Inline, Row } from '../sheet/sheet.ts';
import { hasHappened } from '../book/in-order.ts';
import { column, heading, row } from './wording/blocks.ts';
import { jobDate } from './wording/job.ts';
import { itemName } from './wording/named.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const thingIndex = defineView({
  id: 'thing-index',
  purpose: 'Things by name, each with the dates of the records that worked on it, read it or fitted it.',
  needs: 'machine',
  options: [],
  long: { page: 'log.html', title: 'Log' },
  blocks: (context): readonly Block[] => {
    const { say } = context;
    return [
      heading(2, say('Index'), 'index'),
      {
        type: 'table',
        columns: [column(say('Thing'), 5), column(say('Records'), 10)],
        rows: entries(context).map(([name, jobs]) => entryRow(name, jobs)),
        empty: say('No record names a thing.'),
        use: 'read',
      },
    ];
  },
});

/** Names in the order of the alphabet, large and small letters alike; the records of each in their own order. */
function entries(context: ViewContext): readonly (readonly [string, readonly Job[]])[] {
  const found = new Map<string, { readonly name: string; readonly jobs: Job[] }>();
  for (const job of context.book.records.jobs.filter(hasHappened)) {
    for (const name of new Set(namesIn(context, job))) {
      const key = name.toLowerCase();
      const entry = found.get(key) ?? { name, jobs: [] };
      if (!entry.jobs.includes(job)) entry.jobs.push(job);
      found.set(key, entry);
    }
  }
  const sorted = [...found].toSorted(([one], [other]) => (one < other ? -1 : one > other ? 1 : 0));
  return sorted.map(([, { name, jobs }]) => [name, jobs]);
}

function namesIn({ book }: ViewContext, job: Job): readonly string[] {
  const measured = (item: string): string => book.limits.get(item)?.name ?? book.settings.get(item)?.name ?? item;
  return [
    ...job.work.map(({ thing }) => itemName(book, thing)),
    ...job.readings.map(({ item }) => measured(item)),
    ...job.parts.filter(({ state }) => state === 'fitted').map(({ part }) => part),
  ];
}

function entryRow(name: string, jobs: readonly Job[]): Row {
  return row(
    name,
    jobs.flatMap((job, index): readonly Inline[] => (index === 0 ? [jobDate(job)] : ['; ', jobDate(job)])),
  );
}
