// The lists over all machines of a workshop: what is held, due and to get, what moved between them, what lies on the shelf.
import type { Book, DueLine } from '../book/book.ts';
import { plainName } from '../book/names.ts';
import { shoppingList, type ToGet } from '../book/shopping/shopping-list.ts';
import { buyingText, countedName, holdingText, shopText } from '../book/shopping/shopping-text.ts';
import type { OneOfThem } from '../book/workshop-looks.ts';
import type { Job, StockLine } from '../records/model.ts';
import type { Block, Inline, Row, Text } from '../sheet/sheet.ts';
import { instruments } from '../views/instruments.ts';
import { neverRecorded } from '../views/service-due.ts';
import { column, heading, joined, row } from '../views/wording/blocks.ts';
import { count, countOf } from '../views/wording/count.ts';
import { dayText, withDates } from '../views/wording/day.ts';
import { contextOf } from './context.ts';

export type Say = (words: string) => string;

/** Words that lead to a file of a machine’s binder. */
export function into(folder: string, file: string, text: string): readonly Inline[] {
  return [{ kind: 'link', text, to: `machine:${folder}/${file}` }];
}

/** Two machines of one name are told apart by their folders. */
export function nameIn(machines: readonly OneOfThem[]): (one: OneOfThem) => string {
  const names = machines.map(({ book }) => book.records.machine.name);
  return ({ folder, book }) => {
    const { name } = book.records.machine;
    return names.filter((other) => other === name).length > 1 ? `${name} (${folder})` : name;
  };
}

export function heldTable(machines: readonly OneOfThem[], say: Say): Block {
  const name = nameIn(machines);
  return {
    type: 'table',
    columns: [column(say('Machine'), 4), column(say('Hold points'), 10)],
    rows: machines.flatMap((one): readonly Row[] => {
      const held = one.book.holds.filter((hold) => !hold.clear).toSorted((a, b) => a.point.order - b.point.order);
      if (held.length === 0) return [];
      const points = held.map(({ point, checks }): Text => {
        const open = checks.filter(({ state }) => state === 'not proved' || state === 'undone').length;
        const title = point.at.file.startsWith('content/') ? say(point.title) : point.title;
        const why = open === 0 ? '' : `, ${countOf(open, say('check open'), say('checks open'))}`;
        return [...into(one.folder, `hold-points.html#${point.id}`, title), why];
      });
      return [row(name(one), joined(points))];
    }),
    empty: say('Nothing is held, by the records.'),
    use: 'read',
  };
}

export function isDue({ state }: DueLine): boolean {
  return state === 'overdue' || state === 'due';
}

export function dueTable(machines: readonly OneOfThem[], say: Say): Block {
  const name = nameIn(machines);
  const all = machines.flatMap((one) => {
    const unknown = new Set(neverRecorded(one.book.due));
    return one.book.due.filter((line) => isDue(line) && !unknown.has(line)).map((line) => ({ one, line }));
  });
  const rank = ({ line }: (typeof all)[number]): string =>
    `${line.state === 'overdue' ? 'a' : 'b'}${line.dueDay ?? '9'}`;
  const sorted = all.toSorted((a, b) => (rank(a) < rank(b) ? -1 : rank(a) > rank(b) ? 1 : 0));
  return {
    type: 'table',
    columns: [column(say('Machine'), 4), column(say('Service'), 4), column(say('State'), 2), column(say('Why'), 6)],
    rows: [
      ...sorted.slice(0, mostDue).map(({ one, line: { service, state, why } }) => {
        const own = !service.at.file.startsWith('content/');
        const item = own ? service.item : say(service.item);
        const words = `${item}, ${say(service.action)}`;
        return row(name(one), into(one.folder, 'service.html', words), say(state), withDates(say(why)));
      }),
      ...moreDue(sorted.length - mostDue, say),
      ...machines.flatMap((one) => neverDone(one, name(one), say)),
    ],
    empty: say('Nothing is due, by the records.'),
    use: 'read',
  };
}

/** So many lines, the most pressing first, keep the page small with any number of machines. */
const mostDue = 60;

function moreDue(rest: number, say: Say): readonly Row[] {
  if (rest <= 0) return [];
  const text = `${countOf(rest, say('more service'), say('more services'))}, ${say('on the pages of the machines')}`;
  return [{ kind: 'band', text }];
}

/** What was never recorded counts as due; a line for each would hide what presses. */
function neverDone({ folder, book }: OneOfThem, name: string, say: Say): readonly Row[] {
  const unknown = neverRecorded(book.due).filter(isDue).length;
  if (unknown === 0) return [];
  const words = countOf(unknown, say('service'), say('services'));
  const why = say('no record of it: an unknown history counts as due now');
  return [row(name, into(folder, 'service.html', words), say('due'), why)];
}

/** One list for all: a thing that two machines want is bought in one go, and what holds a hold point comes first. */
export function shoppingTable(machines: readonly OneOfThem[], say: Say): Block {
  const { trips } = shoppingList(machines.map(({ book }) => book));
  return {
    type: 'table',
    columns: [column(say('Got'), 1, 'centre'), column(say('Part, number'), 6), column(say('For'), 7)],
    rows: trips.flatMap((trip): readonly Row[] => {
      const more = withDates(shopText(trip).join('; '));
      const shop = trip.name === '' ? say('supplier not named') : trip.name;
      const band: Text = [{ kind: 'strong', text: shop }, ...(more === '' ? [] : [`: ${more}`])];
      return [{ kind: 'band', text: band }, ...trip.toGet.map((one) => wantedRow(one))];
    }),
    empty: say('No part is wanted.'),
    use: 'work',
  };
}

function wantedRow(one: ToGet): Row {
  const { part, askedBy } = one;
  const numbers = [part.number, part.bookNumber].filter((number) => number !== undefined)[0];
  const forWhom = [...new Set(askedBy.map(({ machine, job }) => `${machine}, ${job.title}`))];
  return row(
    { box: 'tick' },
    joined([countedName(part.part, one.count), numbers, withDates(buyingText(one).join('; '))], ', '),
    joined([...forWhom, holdingText(one)]),
  );
}

interface Move {
  readonly one: OneOfThem;
  readonly job: Job;
  readonly part: string;
  readonly way: string;
}

function movesOf(one: OneOfThem, say: Say): readonly Move[] {
  return one.book.parts.flatMap(({ job, part }): readonly Move[] => {
    const { movedTo, movedFrom } = part;
    const line = { one, job, part: part.part };
    return [
      ...(movedTo === undefined ? [] : [{ ...line, way: `${say('to')} ${movedTo}` }]),
      ...(movedFrom === undefined ? [] : [{ ...line, way: `${say('from')} ${movedFrom}` }]),
    ];
  });
}

/** Both sides of a move stand in it, so that a day that differs, or a side that is silent, is seen. */
export function movesTable(machines: readonly OneOfThem[], say: Say): Block {
  const name = nameIn(machines);
  return {
    type: 'table',
    columns: [column(say('Day'), 3), column(say('Part'), 4), column(say('Machine'), 4), column(say('Went or came'), 4)],
    rows: machines
      .flatMap((one) => movesOf(one, say))
      .toSorted((a, b) => (a.job.date.from < b.job.date.from ? 1 : a.job.date.from > b.job.date.from ? -1 : 0))
      .map(({ one, job, part, way }) =>
        row(dayText(job.date.from), part, into(one.folder, `jobs/${job.id}.html`, name(one)), way),
      ),
    empty: say('No part is recorded as moved.'),
    use: 'read',
  };
}

/** What lies there for all of them; a machine’s own drawer stands in its own binder. */
export function shelf(machines: readonly OneOfThem[], say: Say): readonly Block[] {
  const all = new Map<string, StockLine>();
  for (const { book } of machines)
    for (const line of sharedStock(book)) all.set(`${plainName(line.part)} ${line.number ?? ''}`, line);
  return [
    heading(2, say('On the shelf, for every machine'), 'shelf'),
    {
      type: 'table',
      columns: [column(say('Part'), 6), column(say('Number'), 4), column(say('How many'), 3, 'right')],
      rows: [...all.values()].map(({ part, number, count: there }) =>
        row(part, number ?? '', there === undefined ? say('enough') : count(there)),
      ),
      empty: say('No stock is written down in workshop.yaml beside the machine folders.'),
      use: 'read',
    },
  ];
}

function sharedStock({ records }: Book): readonly StockLine[] {
  return (records.workshop?.stock ?? []).filter(({ at }) => at.file.startsWith('../'));
}

/** The measuring tools that all of them share. */
export function sharedInstruments({ book }: OneOfThem): readonly Block[] {
  const shared = book.records.instruments.filter(({ at }) => at.file.startsWith('../'));
  if (shared.length === 0) return [];
  const records = { ...book.records, instruments: shared };
  return instruments.blocks(contextOf({ ...book, records }));
}
