// What is off: everything still open, oldest danger first, and bag by bag what lies in it.
import type { BagLine, OpenLine } from '../book/book.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, paragraphs, row, stack } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { workParticulars, workThing } from './wording/work.ts';
import { openStates } from './state-left.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const whatIsOff = defineView({
  id: 'what-is-off',
  purpose: 'Everything still off, loose, empty, disconnected, open, away or temporary; then bag by bag.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say } = context;
    return stack(heading(2, say('Still open'), 'still-open'), open(context), bags(context));
  },
});

function openRow({ book, say }: ViewContext, line: OpenLine): Row {
  return row(
    { box: 'tick', id: `closed/${line.job.id}/${line.entry.verb}/${line.entry.thing}` },
    workThing(book, line.entry),
    workParticulars(book, say, line.entry),
    dayText(line.since),
    [jobTitle(line.job)],
  );
}

function open(context: ViewContext): Block {
  const { book, say } = context;
  const rows = openStates.flatMap((state): readonly Row[] => {
    const things = book.off.open.filter((line) => line.state === state);
    if (things.length === 0) return [];
    return [
      { kind: 'band', text: [{ kind: 'strong', text: say(state) }] },
      ...things.map((one) => openRow(context, one)),
    ];
  });
  return {
    type: 'table',
    columns: [
      column(say('Closed'), 1, 'centre'),
      column(say('What'), 4),
      column(say('Particulars'), 5),
      column(say('Since'), 3),
      column(say('Record'), 4),
    ],
    rows,
    empty: say('Nothing is open, by the records.'),
    use: 'work',
  };
}

function bagRows({ book, say }: ViewContext, bag: BagLine): readonly Row[] {
  const band: Row = { kind: 'band', text: [{ kind: 'strong', text: `${say('Bag')} ${bag.bag}` }] };
  const contents = bag.contents.map(({ entry, job }) => {
    // Which bag it is stands above its lines.
    const { bag: _above, ...besides } = entry;
    return row(workThing(book, entry), workParticulars(book, say, besides), [jobTitle(job)]);
  });
  return [band, ...contents];
}

function emptied({ book, say }: ViewContext): Block | undefined {
  const names = book.off.bags.filter((bag) => bag.emptied).map((bag) => bag.bag);
  return names.length === 0 ? undefined : paragraphs(`${say('Emptied')}: ${names.join(', ')}.`);
}

function bags(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const full = book.off.bags.filter((bag) => !bag.emptied);
  const none = book.off.bags.length > 0 ? say('Nothing lies in a bag, by the records.') : say('No bag is recorded.');
  return stack(
    heading(2, say('Bags'), 'bags'),
    {
      type: 'table',
      columns: [column(say('In the bag'), 4), column(say('Particulars'), 5), column(say('Record'), 4)],
      rows: full.flatMap((bag) => bagRows(context, bag)),
      empty: none,
      use: 'read',
    },
    emptied(context),
  );
}
