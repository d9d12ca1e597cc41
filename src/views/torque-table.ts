// The torque table: the maker's value first and as the manual writes it, the other units after it, and a blank where no value is known.
import type { TorqueRow } from '../book/book.ts';
import type { Block, Cell, Inline, Row, Text } from '../sheet/sheet.ts';
import { column, heading, joined, lines, row, stack } from './wording/blocks.ts';
import { fastenerSize } from './wording/fastener.ts';
import { jobNamed } from './wording/job.ts';
import { stagesText, torqueAsWritten, torqueInOtherUnits } from './wording/torque.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const torqueTable = defineView({
  id: 'torque-table',
  purpose:
    'Every fastener with its torque in three units, threads, stages and order, locking, and where the value comes from.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(table(context), key(context), repaired(context)),
});

/** What is set large: the value as written, or a box to write in when it is known. */
export function torqueCell({ book }: ViewContext, row: TorqueRow): Cell {
  const { value } = row;
  if (value === undefined)
    return { box: 'write', unit: unitAsked(book.records.machine.units), id: `torque/${row.fastener.id}` };
  const text = torqueAsWritten(value, book.records.machine.units);
  if (row.basis !== 'computed') return { text: [{ kind: 'figure', text }], big: true };
  const figure: Inline = { kind: 'figure', text, to: `working:torque-${row.fastener.id}` };
  return { text: [figure], big: true };
}

function unitAsked(units: 'metric' | 'imperial'): string {
  return units === 'metric' ? 'N·m' : 'lbf·ft';
}

/** `maker`, `worked out`, `not known`: the origin in a word, explained by the key below the table. */
export function basisWord(row: TorqueRow): string {
  if (row.basis === 'computed') return 'worked out';
  return row.basis === 'maker' ? 'maker' : 'not known';
}

/** Stages and order in one cell. */
export function stagesAndOrder(row: TorqueRow): Text {
  const stages = row.stages.length === 0 ? undefined : stagesText(row.stages);
  return joined([stages, row.fastener.order]);
}

/** Locking, and whether it is always new. */
export function lockingText({ say }: ViewContext, row: TorqueRow): Text {
  return joined([row.fastener.locking, row.fastener.singleUse ? say('always new') : undefined]);
}

/** `dry` or `oiled`; what is said of the threads goes with the figure. */
function threadsText({ say }: ViewContext, { fastener }: TorqueRow): Text | undefined {
  return fastener.threads === undefined ? undefined : say(fastener.threads);
}

function rowOf(context: ViewContext, one: TorqueRow): Row {
  const { fastener } = one;
  return {
    kind: 'cells',
    id: `torque-${fastener.id}`,
    cells: [
      { text: joined([[{ kind: 'strong', text: fastener.name }], fastenerSize(fastener)], ', ') },
      torqueCell(context, one),
      {
        text: one.value === undefined ? '' : joined(torqueInOtherUnits(one.value, context.book.records.machine.units)),
      },
      { text: joined([threadsText(context, one), stagesAndOrder(one), lockingText(context, one)]) },
      { text: fromText(context, one) },
    ],
  };
}

/** Origin in a word and the page of the book; a note stands in words below the table. */
function fromText(context: ViewContext, one: TorqueRow): Text {
  const { say } = context;
  const below = notesOf(one) === undefined ? undefined : say('see below');
  return joined([one.basis === 'maker' ? (pageText(context, one) ?? say('maker')) : say(basisWord(one)), below]);
}

/** What a correction of the book says of a value. Repaired holes have a table of their own. */
function notesOf(one: TorqueRow): string | undefined {
  return one.basis === 'maker' ? one.note : undefined;
}

function notes({ book }: ViewContext): readonly Text[] {
  return book.torque.flatMap((one): readonly Text[] => {
    const note = one.changed === undefined ? notesOf(one) : undefined;
    return note === undefined ? [] : [`${one.fastener.name}: ${note}`];
  });
}

function pageText({ say }: ViewContext, one: TorqueRow): string | undefined {
  const { page } = one.fastener.source;
  return page === undefined ? undefined : `${say('page')}\u00a0${page}`;
}

function table(context: ViewContext): Block {
  const { book, say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Fastener'), 6),
      column(say('Torque'), 4, 'right'),
      column(say('The same in'), 4),
      column(say('Threads, stages, order, locking'), 6),
      column(say('From'), 3),
    ],
    rows: book.torque.map((one) => rowOf(context, one)),
    empty: say('No fastener is recorded.'),
    use: 'read',
  };
}

function key(context: ViewContext): Block | undefined {
  const { book, say } = context;
  if (book.torque.length === 0) return undefined;
  const computed = book.torque.some((one) => one.basis === 'computed');
  const unknown = book.torque.some((one) => one.basis === 'none');
  return lines([
    ...notes(context),
    say(
      'page: of the maker’s book named under sources, in its own unit; the other units are worked out from it. The book goes before this sheet.',
    ),
    ...(computed
      ? [
          say(
            'worked out: a band by thread, strength and friction, only for a cover, bracket or trim fastener marked so by the owner. Start at its low end.',
          ),
        ]
      : []),
    ...(unknown
      ? [
          say(
            'not known: no maker’s value is recorded. Find it before the fastener goes in for good; no general figure is printed in its place.',
          ),
        ]
      : []),
  ]);
}

function repaired(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const changed = book.torque.flatMap((one) => (one.changed === undefined ? [] : [{ one, changed: one.changed }]));
  if (changed.length === 0) return [];
  return [
    heading(2, say('Repaired holes and changed threads'), 'repaired-holes'),
    {
      type: 'table',
      columns: [column(say('Fastener'), 4), column(say('Now'), 4), column(say('Record'), 5), column(say('Remark'), 5)],
      rows: changed.map(({ one, changed: now }) =>
        row(one.fastener.name, now.now, jobNamed(now.by), one.note ?? say('look at it the next time it comes out')),
      ),
      empty: '',
      use: 'read',
    },
  ];
}
