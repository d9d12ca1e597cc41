// The lists over all machines of a workshop: what is held, due and to get, what moved between them, what lies on the shelf.
import type { MovedPart } from '../book/beside-others.ts';
import { movedWorth, withOthersWorth } from '../book/moved-worth.ts';
import { plainName } from '../book/names.ts';
import { buyingText, countedName, holdingText, shopText } from '../book/shopping/shopping-text.ts';
import { tripsFor, type ToGet } from '../book/shopping/trips.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { StockLine } from '../records/model.ts';
import type { Block, Inline, Row, Text } from '../sheet/sheet.ts';
import { movedWorthText } from '../views/moved-worth.ts';
import { column, heading, joined, lines, row } from '../views/wording/blocks.ts';
import { count, countOf } from '../views/wording/count.ts';
import { dayText, withDates } from '../views/wording/day.ts';
import type { FrontLines } from './front-lines.ts';

export type Say = (words: string) => string;

/** Words that lead to a file of a machine’s binder. */
export function into(folder: string, file: string, text: string): readonly Inline[] {
  return [{ kind: 'link', text, to: `machine:${folder}/${file}` }];
}

/** Two machines of one name are told apart by their folders. */
export function nameIn(machines: readonly FrontLines[]): (one: FrontLines) => string {
  const names = machines.map(({ name }) => name);
  return ({ folder, name }) => (names.filter((other) => other === name).length > 1 ? `${name} (${folder})` : name);
}

/** The point that each machine is held at first, for those after it are held as well; all of them stand on its own page. */
export function heldTable(machines: readonly FrontLines[], say: Say): Block {
  const name = nameIn(machines);
  return {
    type: 'table',
    columns: [
      column(say('Machine'), 4),
      column(say('Held at'), 7),
      column(say('Checks open'), 3, 'right'),
      column(say('After it'), 4),
    ],
    rows: machines.flatMap((one): readonly Row[] => {
      const [first, ...others] = one.held;
      if (first === undefined) return [];
      const { id, title, ours, open } = first;
      return [
        row(
          name(one),
          into(one.folder, `hold-points.html#${id}`, ours ? say(title) : title),
          open === 0 ? say('not all records can be read') : count(open),
          others.length === 0
            ? ''
            : into(one.folder, 'hold-points.html', `${count(others.length)}\u00a0${say('more held')}`),
        ),
      ];
    }),
    empty: say('Nothing is held, by the records.'),
    use: 'read',
  };
}

export function dueTable(machines: readonly FrontLines[], say: Say): Block {
  const name = nameIn(machines);
  const all = machines.flatMap((one) => one.pressing.map((line) => ({ one, line })));
  const rank = ({ line }: (typeof all)[number]): string =>
    `${line.state === 'overdue' ? 'a' : 'b'}${line.dueDay ?? '9'}`;
  const sorted = all.toSorted((a, b) => (rank(a) < rank(b) ? -1 : rank(a) > rank(b) ? 1 : 0));
  return {
    type: 'table',
    columns: [column(say('Machine'), 4), column(say('Service'), 4), column(say('State'), 2), column(say('Why'), 6)],
    rows: [
      ...sorted.slice(0, mostDue).map(({ one, line: { title, ours, action, state, why } }) => {
        const words = `${ours ? say(title) : title}, ${say(action)}`;
        return row(name(one), into(one.folder, 'service.html', words), say(state), withDates(say(firstOf(why))));
      }),
      ...moreDue(sorted.length - mostDue, say),
      ...machines.flatMap((one) => neverDone(one, name(one), say)),
    ],
    empty: say('Nothing is due, by the records.'),
    use: 'read',
  };
}

/** The bound that comes first; that it is the first is said where the others stand, on the page of the machine. */
function firstOf(why: string): string {
  return (why.split('; ')[0] ?? why).replace(/^first /u, '');
}

/** So many lines, the most pressing first, keep the page small with any number of machines. */
const mostDue = 60;

function moreDue(rest: number, say: Say): readonly Row[] {
  if (rest <= 0) return [];
  const text = `${countOf(rest, say('more service'), say('more services'))}, ${say('on the pages of the machines')}`;
  return [{ kind: 'band', text }];
}

/** What was never recorded counts as due; a line for each would hide what presses. */
function neverDone({ folder, neverRecorded }: FrontLines, name: string, say: Say): readonly Row[] {
  if (neverRecorded === 0) return [];
  const words = countOf(neverRecorded, say('service'), say('services'));
  const why = say('no record of it: an unknown history counts as due now');
  return [row(name, into(folder, 'service.html', words), say('due'), why)];
}

/** One list for all: a thing that two machines want is bought in one go, and what holds a hold point comes first. */
export function shoppingTable(machines: readonly FrontLines[], say: Say): Block {
  const trips = tripsFor(machines.map(({ needs }) => needs));
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

/** Both sides of a move stand in it, so that a day that differs, or a side that is silent, is seen. */
export function movesTable(machines: readonly FrontLines[], say: Say): Block {
  const name = nameIn(machines);
  const moves = machines.flatMap((one) =>
    one.moved.flatMap((part) => ways(part, say).map((way) => ({ one, part, way }))),
  );
  return {
    type: 'table',
    columns: [column(say('Day'), 3), column(say('Part'), 4), column(say('Machine'), 4), column(say('Went or came'), 4)],
    rows: moves
      .toSorted((a, b) => (a.part.day < b.part.day ? 1 : a.part.day > b.part.day ? -1 : 0))
      .map(({ one, part, way }) =>
        row(dayText(part.day), part.part, into(one.folder, `jobs/${part.job}.html`, name(one)), way),
      ),
    empty: say('No part is recorded as moved.'),
    use: 'read',
  };
}

/** What each machine stands at that gave parts or got some; what one side set counts for both. */
export function movedWorths(machines: readonly FrontLines[], say: Say): readonly Block[] {
  const name = nameIn(machines);
  const told = withOthersWorth(machines).flatMap((one): readonly string[] => {
    const worth = movedWorth(one.paid, one.moved, one.rates);
    // Where nobody speaks of money, there is nothing to say of it.
    const isSilent = one.paid.minor === 0 && worth?.gone.minor === 0 && worth.came.minor === 0;
    return worth === undefined || isSilent
      ? []
      : [`${name(one)}: ${movedWorthText(say, formatMoney(one.paid), worth)}`];
  });
  return told.length === 0 ? [] : [lines(told)];
}

function ways({ to, from }: MovedPart, say: Say): readonly string[] {
  return [
    ...(to === undefined ? [] : [`${say('to')} ${to}`]),
    ...(from === undefined ? [] : [`${say('from')} ${from}`]),
  ];
}

/** What lies there for all of them. */
export function shelf(machines: readonly FrontLines[], say: Say): readonly Block[] {
  const all = new Map<string, StockLine>();
  for (const one of machines)
    for (const line of one.shelf) all.set(`${plainName(line.part)} ${line.number ?? ''}`, line);
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
