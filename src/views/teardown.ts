// The teardown sheet: step by step, an off and an on tick for each part, fasteners by size, length and number, bag, way round, caution at the step.
import type { Block, Cell, Inline, Row, Text } from '../sheet/sheet.ts';
import { column, heading, joined, lines, sentence, stack } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { count, times } from './wording/count.ts';
import { fastenerNamed } from './wording/fastener.ts';
import { ours } from './wording/ours.ts';
import { plannedText, plannedWork } from './wording/planned-work.ts';
import type { PlannedLine } from './wording/planned-work.ts';
import { stepsOf } from './wording/steps.ts';
import type { NumberedStep } from './wording/steps.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** Room for what nobody foresaw, after so many steps. */
const spareAfter = 8;

/** Lines to write on where no procedure says what comes off. */
const spareWithoutProcedure = 6;

export const teardown = defineView({
  id: 'teardown',
  purpose: 'Taking apart: steps with off and on ticks, fasteners, bags, way round and cautions at the step.',
  needs: 'job',
  options: [],
  blocks: (context) => stack(noProcedure(context), table(context), honest(context)),
});

/** A job that names no procedure has its own lines, and room for everything that comes off besides. */
function noProcedure({ say, plan }: ViewContext): readonly Block[] {
  if ((plan?.procedures ?? []).length > 0) return [];
  return [lines([say('This job names no procedure: write each part as it comes off.')])];
}

function table(context: ViewContext): Block {
  const { say, plan } = context;
  const steps = stepsOf(context, 'steps');
  const planned = plannedWork(context).away;
  const spare = (plan?.procedures ?? []).length > 0 ? 0 : spareWithoutProcedure;
  return {
    type: 'table',
    columns: [
      column(say('Off'), 1, 'centre'),
      column(say('On'), 1, 'centre'),
      column(say('Step'), 1, 'right'),
      column(say('Part, and what to do'), 10),
      column(say('Fasteners'), 5),
      column(say('Bag'), 1.4),
      column(say('Condition, photo no.'), 4),
    ],
    rows: steps
      .flatMap((one, index) => [
        ...stepRows(context, one),
        ...(isSpare(index) ? [spareRow(context, count(one.number))] : []),
      ])
      .concat(planned.map((line, index) => plannedRow(context, line, steps.length + index + 1)))
      .concat(Array.from({ length: spare }, (_, index) => spareRow(context, `own-${count(index + 1)}`))),
    empty: '',
    use: 'work',
  };
}

/** A line of the record that is still to be done. */
function plannedRow(context: ViewContext, line: PlannedLine, number: number): Row {
  const { job } = context;
  const id = `${job?.id ?? ''}/${line.entry.thing}`;
  const named = line.fasteners.map((one) => {
    const { name, size } = fastenerNamed(context.book, one);
    const counted = line.entry.fasteners.find(({ id: known }) => known === one)?.count;
    return size !== '' ? `${size} ${name}` : counted === undefined ? name : `${times(counted)}\u00a0${name}`;
  });
  const bag: Cell = line.entry.bag === undefined ? {} : { text: line.entry.bag, big: true };
  return {
    kind: 'cells',
    cells: [
      { box: 'tick', id: `${id}/off` },
      { box: 'tick', id: `${id}/on` },
      { text: count(number) },
      { text: plannedText(context, line) },
      named.length === 0 ? { box: 'line' } : { text: named.join('; ') },
      bag,
      { box: 'line' },
    ],
  };
}

function isSpare(index: number): boolean {
  return (index + 1) % spareAfter === 0;
}

function spareRow({ job }: ViewContext, name: string): Row {
  const id = `${job?.id ?? ''}/spare-${name}`;
  const ticks: readonly Cell[] = [
    { box: 'tick', id: `${id}/off` },
    { box: 'tick', id: `${id}/on` },
  ];
  return {
    kind: 'cells',
    cells: [...ticks, {}, { box: 'line' }, { box: 'line' }, {}, { box: 'line' }],
  };
}

/** Ids of the ticks of a part: permanent, by record and part. */
function ticks({ job, plan }: ViewContext, part: string): readonly Cell[] {
  const work = plan?.job.work ?? [];
  const done = (verbs: readonly string[]): boolean =>
    work.some((one) => one.thing === part && verbs.includes(one.verb));
  const id = `${job?.id ?? ''}/${part}`;
  return [
    { box: 'tick', id: `${id}/off`, done: done(['removed']) },
    { box: 'tick', id: `${id}/on`, done: done(['refitted', 'replaced']) },
  ];
}

/** Size, length and number with the name; a line to write on where the maker's data does not know the fastener. */
function fastenersOf({ book }: ViewContext, ids: readonly string[]): Cell {
  const named = ids.map((id) => fastenerNamed(book, id));
  const text = named.map(({ name, size }) => (size === '' ? name : `${size} ${name}`)).join('; ');
  return named.some(({ size }) => size === '') ? { text, box: 'line' } : { text };
}

function stepRows(context: ViewContext, one: NumberedStep): readonly Row[] {
  const { step, procedure } = one;
  const say = (text: string): string => ours(context, procedure.at, text);
  const parts = step.off.length === 0 ? [undefined] : step.off;
  const rows = parts.map((part, index): Row => {
    const both: readonly Cell[] =
      part === undefined ? [{ box: 'tick', id: tickOf(context, one) }, {}] : ticks(context, part);
    const name: Inline[] = part === undefined ? [] : [{ kind: 'strong', text: say(part) }];
    if (index > 0) return { kind: 'cells', cells: [...both, {}, { text: name }, {}, {}, { box: 'line' }] };
    const bag: Cell = one.bag === undefined ? {} : { text: count(one.bag), big: true };
    const does = joined([name, stepText(context, one)], ': ');
    const cells = [{ text: count(one.number) }, { text: does }, fastenersOf(context, step.fasteners)];
    return { kind: 'cells', cells: [...both, ...cells, bag, { box: 'line' }] };
  });
  return [...step.cautions.flatMap((id) => cautionRow(context, id)), ...rows];
}

/** What to do, the note, and the way round, in this order. */
function stepText(context: ViewContext, { step, procedure }: NumberedStep): Text {
  const say = (text: string): string => ours(context, procedure.at, text);
  const note = step.note === undefined ? undefined : sentence(say(step.note));
  const way: Text | undefined =
    step.wayRound === undefined
      ? undefined
      : [{ kind: 'strong', text: `${context.say('Way round')}: ` }, say(step.wayRound)];
  return joined([say(step.do), note, way], '. ');
}

function tickOf({ job }: ViewContext, one: NumberedStep): string {
  return `${job?.id ?? ''}/${one.procedure.id}/step-${count(one.number)}`;
}

/** What goes wrong is written down where it happens, in three columns side by side. */
function honest({ say }: ViewContext): readonly Block[] {
  const heads = ['Missing when found', 'Broken by me', 'Sent out: to whom, promised for'];
  return [
    heading(3, say('Missing, broken, sent out'), 'missing-broken-sent-out'),
    { type: 'grid', columns: heads.map((head) => column(say(head), 4)), rows: 3 },
  ];
}
