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
export function torqueCell({ book, say }: ViewContext, row: TorqueRow): Cell {
  const { value } = row;
  if (value === undefined)
    return { box: 'write', unit: unitAsked(book.records.machine.units), id: `torque/${row.fastener.id}` };
  const text = torqueAsWritten(value);
  if (row.basis !== 'computed') return { text: [{ kind: 'figure', text }], big: true };
  const figure: Inline = { kind: 'figure', text, to: `working:torque-${row.fastener.id}`, mark: say('worked out') };
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
export function stagesAndOrder({ say }: ViewContext, row: TorqueRow): Text {
  const stages = row.stages.length === 0 ? undefined : `${say('stages')}: ${stagesText(row.stages)}`;
  return joined([stages, row.fastener.order]);
}

/** Locking, and whether it is always new. */
export function lockingText({ say }: ViewContext, row: TorqueRow): Text {
  return joined([row.fastener.locking, row.fastener.singleUse ? say('always new') : undefined]);
}

function rowOf(context: ViewContext, one: TorqueRow): Row {
  const { say } = context;
  const { fastener } = one;
  return {
    kind: 'cells',
    id: `torque-${fastener.id}`,
    cells: [
      { text: joined([fastener.name, fastenerSize(fastener)], ', ') },
      torqueCell(context, one),
      { text: one.value === undefined ? '' : joined(torqueInOtherUnits(one.value)) },
      { text: fastener.threads === undefined ? '' : say(fastener.threads) },
      { text: stagesAndOrder(context, one) },
      { text: lockingText(context, one) },
      { text: fromText(context, one) },
    ],
  };
}

/** Origin in a word, the page of the book, and what a repair or a correction changed. */
function fromText(context: ViewContext, one: TorqueRow): Text {
  const { say } = context;
  if (one.basis !== 'maker') return say(basisWord(one));
  const repaired = one.changed === undefined ? one.note : say('hole repaired, see below');
  return joined([joined([say('maker'), pageText(context, one)], ', '), repaired]);
}

function pageText({ say }: ViewContext, one: TorqueRow): string | undefined {
  const { page } = one.fastener.source;
  return page === undefined ? undefined : `${say('page')} ${page}`;
}

function table(context: ViewContext): Block {
  const { book, say } = context;
  const parts = [...new Set(book.torque.map((one) => one.fastener.of ?? ''))];
  const rows = parts.flatMap((part): readonly Row[] => {
    const those = book.torque.filter((one) => (one.fastener.of ?? '') === part);
    const name = part === '' ? say('other fasteners') : part;
    return [{ kind: 'band', text: [{ kind: 'strong', text: name }] }, ...those.map((one) => rowOf(context, one))];
  });
  return {
    type: 'table',
    columns: [
      column(say('Fastener'), 6),
      column(say('Torque'), 4, 'right'),
      column(say('The same in'), 4),
      column(say('Threads'), 2),
      column(say('Stages, order'), 5),
      column(say('Locking'), 3),
      column(say('From'), 4),
    ],
    rows,
    empty: say('No fastener is recorded.'),
    use: 'read',
  };
}

function key({ book, say }: ViewContext): Block {
  const computed = book.torque.some((one) => one.basis === 'computed');
  const unknown = book.torque.some((one) => one.basis === 'none');
  return lines([
    say(
      'maker: from the book named under sources, in its own unit; the other units are worked out from it. The book goes before this sheet.',
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
