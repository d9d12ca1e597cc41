// Tightening again: only what heat and distance call for, in order, with value, threads and a box; valve clearances after the head of a four-stroke.
import { calledFor, holdsTheHead } from '../book/plan/called-for.ts';
import type { CalledFor } from '../book/plan/called-for.ts';
import { printRange } from '../figure/print.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, joined, lines, row, stack } from './wording/blocks.ts';
import { reasonText } from './wording/called-for.ts';
import { fastenerSize } from './wording/fastener.ts';
import { filled } from './wording/filled.ts';
import { grouped } from './wording/grouped.ts';
import { ours } from './wording/ours.ts';
import { seriesIndex } from './wording/series-index.ts';
import { valueText } from './wording/value.ts';
import { lastReading } from './inspection.ts';
import { lockingText, stagesAndOrder, torqueCell } from './torque-table.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const reTorque = defineView({
  id: 're-torque',
  purpose: 'What heat cycles and distance call for to be tightened again, with value, threads, order and boxes.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const called = calledFor(context.book);
    return stack(table(context, called), clearances(context), rest(context));
  },
});

function table(context: ViewContext, called: readonly CalledFor[]): Block {
  const { say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Done'), 1, 'centre'),
      column(say('Fastener; threads, stages, order'), 8),
      column(say('Torque'), 4, 'right'),
      column(say('Reached'), 3),
      column(say('Called for by'), 4),
    ],
    rows: [...grouped(called, thingOf).values()].map((those) => rowOf(context, those)),
    empty: say('Nothing is called for, by the records: no heat and no distance since each was tightened last.'),
    use: 'work',
  };
}

/** What several call for is tightened once. */
function thingOf({ row: torque, reason }: CalledFor): string {
  if (torque !== undefined) return torque.fastener.id;
  return reason.why === 'due' ? `service ${reason.due.service.id}` : '';
}

function rowOf(context: ViewContext, those: readonly CalledFor[]): Row {
  const { say } = context;
  const [one] = those;
  if (one === undefined) return row();
  const { row: torque, reason } = one;
  const calls = those.map(({ reason: why }) => reasonText(say, why)).join('; ');
  if (torque === undefined) {
    const service = reason.why === 'due' ? reason.due.service : undefined;
    const item = service === undefined ? '' : ours(context, service.at, service.item);
    const id = `re-torque/${service?.id ?? ''}`;
    return row({ box: 'tick', id }, [{ kind: 'strong', text: item }], {}, { box: 'line' }, calls);
  }
  const { fastener } = torque;
  const threads = fastener.threads === undefined ? undefined : `${say('threads')} ${say(fastener.threads)}`;
  const name = joined([[{ kind: 'strong', text: fastener.name }], fastenerSize(fastener)], ', ');
  return row(
    { box: 'tick', id: `re-torque/${fastener.id}` },
    joined([name, threads, stagesAndOrder(torque), lockingText(context, torque), torque.changed?.now]),
    torqueCell(context, torque),
    { box: 'write', id: `re-torque/${fastener.id}/reached` },
    calls,
  );
}

/** On a four-stroke the clearances move when the head is pulled down: they come after it. */
function clearances({ book, say }: ViewContext): readonly Block[] {
  if (book.records.machine.features.stroke !== 'four') return [];
  const asked = book.records.maker.settings.filter((one) => /valve|tappet/i.test(`${one.id} ${one.name}`));
  if (!book.torque.some(holdsTheHead)) return [];
  const items = asked.map((setting) => ({
    id: `re-torque/${setting.id}`,
    item: setting.name,
    unit: setting.value.kind === 'read' ? setting.value.written.unit.symbol : (setting.range?.unit.symbol ?? ''),
    ...filled('standard', valueText(setting.value) ?? say('not known')),
    ...filled('limit', setting.range === undefined ? undefined : printRange(setting.range)),
    ...filled('condition', setting.condition.join(', ')),
    ...filled('last', lastReading(seriesIndex(book).last(setting.id, ''), setting.condition)),
  }));
  return [
    heading(2, say('Then the valve clearances again'), 'clearances-again'),
    { type: 'blanks', items, empty: say('No clearance is recorded: take it from the maker’s book.') },
  ];
}

function rest({ say }: ViewContext): readonly Block[] {
  return [
    lines([
      say(
        'The maker’s book says whether a nut is eased off first; where it says nothing, an eighth of a turn back and up again is common practice.',
      ),
      say('A nut that turns and never comes to its figure is a pulled stud: stop, write it down, do not go on.'),
    ]),
    {
      type: 'grid',
      caption: say('Besides'),
      columns: [
        column(say('What'), 6),
        column(say('Aimed at'), 3),
        column(say('Reached'), 3),
        column(say('Wrench'), 3),
      ],
      rows: 2,
    },
  ];
}
