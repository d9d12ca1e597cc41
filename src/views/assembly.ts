// The assembly sheet: its own order, read downwards, with torque, threads, stages and the setting to be reached at each step.
import type { Block, Cell, Inline, Row } from '../sheet/sheet.ts';
import type { Book, TorqueRow } from '../book/book.ts';
import { column, joined, lines, sentence, stack } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { reachedId, stepFastenerId, stepId } from '../book/blank-ids.ts';
import { count } from './wording/count.ts';
import { fastenerNamed } from './wording/fastener.ts';
import { ours } from './wording/ours.ts';
import { plannedId, plannedText, plannedWork } from './wording/planned-work.ts';
import type { PlannedLine } from './wording/planned-work.ts';
import { stepsOf } from './wording/steps.ts';
import type { NumberedStep } from './wording/steps.ts';
import { basisWord, lockingText, stagesAndOrder, torqueCell } from './torque-table.ts';
import { firstUnit, torqueAsWritten, torqueInOtherUnits } from './wording/torque.ts';
import { reachedText, tickAt } from './wording/written.ts';
import { blankRow } from './measuring.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const assembly = defineView({
  id: 'assembly',
  purpose: 'Going together in its own order, with torques, threads, stages and settings.',
  needs: 'job',
  options: [],
  blocks: (context) => stack(orderNotGiven(context), orderOfRecord(context), table(context), settings(context)),
});

/** Going back is not the strip read backwards: a procedure without an order of its own says so. */
function orderNotGiven(context: ViewContext): readonly Block[] {
  const without = (context.plan?.procedures ?? []).filter((one) => one.assembly.length === 0);
  if (without.length === 0) return [];
  const { say } = context;
  return [
    lines(
      without.map(
        (one) =>
          `${ours(context, one.at, one.title)}: ${say('no order for going together is written down. Take it from the maker’s book; it is not the strip read backwards.')}`,
      ),
    ),
  ];
}

/** Lines that only follow from what comes off have no order of their own. */
function orderOfRecord(context: ViewContext): readonly Block[] {
  const { say } = context;
  if (!plannedWork(context).back.some((line) => line.follows)) return [];
  return [
    lines([
      say(
        'What this record takes off goes back on these lines, in the order in which it came off. Take the order from the maker’s book; it is not the strip read backwards.',
      ),
    ]),
  ];
}

function table(context: ViewContext): Block {
  const { say } = context;
  const steps = stepsOf(context, 'assembly');
  return {
    type: 'table',
    columns: [
      column(say('Done'), 1, 'centre'),
      column(say('Step'), 1, 'right'),
      column(say('Do, put on, tighten'), 12),
      column(say('Torque'), 4, 'right'),
      column(say('Reached'), 3),
    ],
    rows: [
      ...steps.flatMap((one) => stepRows(context, one)),
      ...plannedWork(context).back.flatMap((line, index) => plannedRows(context, line, steps.length + index + 1)),
    ],
    empty: say('No steps for going together are written down.'),
    use: 'work',
  };
}

/** What is tightened or set is ticked by itself. */
function tick(context: ViewContext, { step, place, procedure }: NumberedStep): Cell {
  const id = stepId(place);
  const singly = step.set.length > 0 ? { singly: true } : {};
  return {
    ...tickAt(context, id),
    about: { asks: ours(context, procedure.at, step.do) },
    ...singly,
  };
}

/** Torques are never ticked together. */
function torqueTick(context: ViewContext, id: string, fastener: string): Cell {
  const { name } = fastenerNamed(context.book, fastener);
  return { ...tickAt(context, id), singly: true, about: { asks: `${name}, ${context.say('tightened')}` } };
}

/** The step, and below it a line for each fastener with its torque and a box for what was reached. */
function stepRows(context: ViewContext, one: NumberedStep): readonly Row[] {
  const { step, procedure } = one;
  const say = (text: string): string => ours(context, procedure.at, text);
  const way = step.wayRound === undefined ? undefined : sentence(say(step.wayRound));
  const does = joined([say(step.do), way, step.note === undefined ? undefined : sentence(say(step.note))], '. ');
  const begin: Row = {
    kind: 'cells',
    cells: [tick(context, one), { text: count(one.number) }, { text: does }, {}, {}],
  };
  const fasteners = step.fasteners.map((id, index): Row => ({
    kind: 'cells',
    cells: [torqueTick(context, stepFastenerId(one.place, index + 1), id), {}, ...fastenerCells(context, id)],
  }));
  return [...step.cautions.flatMap((id) => cautionRow(context, id)), begin, ...fasteners];
}

/** A line of the record that is still to be done, and below it each fastener with its torque. */
function plannedRows(context: ViewContext, line: PlannedLine, number: number): readonly Row[] {
  const id = plannedId(context, line);
  const fasteners = line.fasteners.map((one): Row => ({
    kind: 'cells',
    cells: [torqueTick(context, `${id}/${one}`, one), {}, ...fastenerCells(context, one)],
  }));
  const begin: Row = {
    kind: 'cells',
    cells: [{ box: 'tick', id }, { text: count(number) }, { text: plannedText(context, line) }, {}, {}],
  };
  return [begin, ...fasteners];
}

function fastenerCells(context: ViewContext, id: string): readonly Cell[] {
  const { book, say } = context;
  const { name, size } = fastenerNamed(book, id);
  const torque = book.torque.find((one) => one.fastener.id === id);
  const asks = `${name}, ${say('torque reached')}`;
  const written = reachedText(context, id);
  const reached: Cell = {
    box: 'write',
    id: reachedId(context.job?.id ?? '', id),
    about: { asks, ...(torque?.value === undefined ? {} : aboutTorque(torque.value, book.records.machine.units)) },
    ...(written === undefined ? {} : { written }),
  };
  const what: readonly Inline[] = [{ kind: 'strong', text: name }];
  if (torque === undefined) return [{ text: joined([what, size], ', ') }, { text: say('not known') }, reached];
  const how = joined([
    size,
    otherUnits(book, torque),
    basis(context, torque),
    threads(context, torque),
    stagesAndOrder(torque),
    lockingText(context, torque),
  ]);
  return [{ text: joined([what, how], ', ') }, torqueCell(context, torque), reached];
}

/** The standard for who fills it in, and the unit that a bare number is taken in. */
function aboutTorque(
  value: NonNullable<TorqueRow['value']>,
  units: Book['records']['machine']['units'],
): { readonly standard: string; readonly unit: string } {
  return { standard: torqueAsWritten(value, units), unit: firstUnit(value, units).symbol };
}

function otherUnits(book: Book, torque: TorqueRow): string | undefined {
  return torque.value === undefined
    ? undefined
    : torqueInOtherUnits(torque.value, book.records.machine.units).join(', ');
}

/** A value that is not the maker's says so beside it. */
function basis({ say }: ViewContext, torque: TorqueRow): string | undefined {
  return torque.basis === 'computed' ? say(basisWord(torque)) : undefined;
}

function threads({ say }: ViewContext, torque: TorqueRow): string | undefined {
  const state = torque.fastener.threads;
  return state === undefined ? undefined : `${say('threads')} ${say(state)}`;
}

/** The settings that the steps reach, with the two boxes that the measuring sheet has for them. */
function settings(context: ViewContext): readonly Block[] {
  const ids = new Set(stepsOf(context, 'assembly').flatMap((one) => one.step.set));
  const items = (context.plan?.blanks ?? []).filter(
    (blank) => blank.setting !== undefined && ids.has(blank.setting.id),
  );
  if (items.length === 0) return [];
  return [{ type: 'blanks', items: items.map((blank) => blankRow(context, blank)), empty: '' }];
}
