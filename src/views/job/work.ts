// The work of a record, one line an action, with what closed it or that it is still open.
import type { Book, OpenLine } from '../../book/book.ts';
import type { Job, WorkEntry } from '../../records/model.ts';
import type { Block, Row, Text } from '../../sheet/sheet.ts';
import { column, filledOnly, heading, row, sentence } from '../wording/blocks.ts';
import { dayText } from '../wording/day.ts';
import { jobTitle } from '../wording/job.ts';
import { toDoWord } from '../wording/planned-work.ts';
import { workParticulars, workThing } from '../wording/work.ts';
import type { ViewContext } from '../view.ts';

interface Fate {
  readonly open: ReadonlyMap<WorkEntry, OpenLine>;
  readonly closed: ReadonlyMap<WorkEntry, { readonly byJob: Job }>;
}

const fates = new WeakMap<Book, Fate>();

/** What became of each entry; made once for a book. */
function fateOf(book: Book): Fate {
  const before = fates.get(book);
  if (before !== undefined) return before;
  const fate: Fate = {
    open: new Map(book.off.open.map((line) => [line.entry, line])),
    closed: new Map(book.off.closed.map((line) => [line.entry, line])),
  };
  fates.set(book, fate);
  return fate;
}

/** The state that an entry left open to this day, if it did. */
export function stillOpen(book: Book, entry: WorkEntry): OpenLine['state'] | undefined {
  return fateOf(book).open.get(entry)?.state;
}

/** A table of the work, or nothing. */
export function jobWork(context: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.work.length === 0) return [];
  if (job.state === 'planned') return workToDo(context, job, within);
  const { say } = context;
  return [
    heading(3, say('Work'), `${within}work`),
    filledOnly({
      type: 'table',
      columns: [
        column(say('Done'), 2),
        column(say('To what'), 4),
        column(say('Particulars'), 6),
        column(say('Since then'), 4),
      ],
      rows: job.work.map((entry) => workRow(context, job, entry)),
      empty: '',
      use: 'read',
    }),
  ];
}

/** The lines of a planned job: nothing of it was done. */
function workToDo({ book, say }: ViewContext, job: Job, within: string): readonly Block[] {
  return [
    heading(3, say('To do'), `${within}work`),
    {
      type: 'table',
      columns: [column(say('To do'), 2), column(say('To what'), 4), column(say('Particulars'), 6)],
      rows: job.work.map((entry) =>
        row(say(toDoWord(entry.verb)), workThing(book, entry), workParticulars(book, say, entry)),
      ),
      empty: '',
      use: 'read',
    },
  ];
}

function workRow(context: ViewContext, job: Job, entry: WorkEntry): Row {
  const { book, say } = context;
  return row(
    sentence(say(entry.verb)),
    workThing(book, entry),
    workParticulars(book, say, entry),
    since(context, job, entry),
  );
}

function since({ book, say }: ViewContext, job: Job, entry: WorkEntry): Text {
  const { open, closed } = fateOf(book);
  const still = open.get(entry);
  if (still !== undefined) return [{ kind: 'strong', text: `${say('still')} ${say(still.state)}` }];
  const by = closed.get(entry);
  if (by?.byJob === job) return say('closed in the same record');
  return by === undefined ? '' : [`${say('closed')} ${dayText(by.byJob.date.from)}, `, jobTitle(by.byJob)];
}
