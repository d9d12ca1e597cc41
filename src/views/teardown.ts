// The teardown sheet: step by step, an off and an on tick for each part, way round, fasteners by size, length and number, bag, room for its condition, caution at the step.
import type { Block, Cell, Inline, Row, Text } from '../sheet/sheet.ts';
import { column, joined, lines, sentence, stack } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { nameInRecord } from '../book/own-words.ts';
import { noteId, partId, spareId, stepId } from '../book/blank-ids.ts';
import { verbsOfPart } from '../book/verbs-of-part.ts';
import { endOf } from '../book/planned-lines.ts';
import { count, times } from './wording/count.ts';
import { fastenerNamed } from './wording/fastener.ts';
import { itemName } from './wording/named.ts';
import { ours } from './wording/ours.ts';
import { plannedId, plannedText, plannedWork } from './wording/planned-work.ts';
import type { PlannedLine } from './wording/planned-work.ts';
import { stepsOf } from './wording/steps.ts';
import type { NumberedStep } from './wording/steps.ts';
import { lineAt, tickAt } from './wording/written.ts';
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
      column(say('Bag'), 1.2),
      column(say('Condition, photo no.'), 4.5),
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
  const id = plannedId(context, line);
  const end = endOf(line.entry.verb);
  const back: Cell =
    end === undefined ? {} : { box: 'tick', id: plannedId(context, { ...line, entry: { ...line.entry, verb: end } }) };
  const named = line.fasteners.map((one) => {
    const { name, size } = fastenerNamed(context.book, one);
    const counted = line.entry.fasteners.find(({ id: known }) => known === one)?.count;
    return size !== '' ? `${size} ${name}` : counted === undefined ? name : `${times(counted)}\u00a0${name}`;
  });
  const bag: Cell = line.entry.bag === undefined ? {} : { text: line.entry.bag, big: true };
  return {
    kind: 'cells',
    cells: [
      tickAt(context, id, line.done),
      back,
      { text: count(number) },
      { text: joined([plannedText(context, line), fastenersText(context, named)], '. ') },
      bag,
      lineAt(context, noteId(id)),
    ],
  };
}

function isSpare(index: number): boolean {
  return (index + 1) % spareAfter === 0;
}

function spareRow(context: ViewContext, name: string): Row {
  const id = (asked: Parameters<typeof spareId>[2]): string => spareId(context.job?.id ?? '', name, asked);
  const asks = context.say('What else comes off');
  const ticks: readonly Cell[] = [
    { box: 'tick', id: id('off'), about: { asks: `${asks}: ${context.say('off')}` } },
    { box: 'tick', id: id('on'), about: { asks: `${asks}: ${context.say('on')}` } },
  ];
  return { kind: 'cells', cells: [...ticks, {}, lineAt(context, id('part'), asks), {}, lineAt(context, id('note'))] };
}

/** Ids of the ticks of a part: permanent, by record and part. */
function ticks(context: ViewContext, part: string): readonly Cell[] {
  const { job, plan, say } = context;
  const thing = nameInRecord(context.book.records.maker, part);
  const work = job?.state === 'planned' ? [] : (plan?.job.work ?? []);
  const done = (verbs: readonly string[]): boolean =>
    work.some((one) => one.thing === thing && verbs.includes(one.verb));
  const id = job?.id ?? '';
  const name = partName(context, part);
  const { off, on } = verbsOfPart(context.book.records.maker, part);
  return [
    {
      ...tickAt(context, partId(id, part, 'off'), done(['removed', off])),
      about: { asks: `${name}, ${say('off')}` },
    },
    {
      ...tickAt(context, partId(id, part, 'on'), done(['refitted', 'replaced', on])),
      about: { asks: `${name}, ${say('back on')}` },
    },
  ];
}

/** A filling is named by its id in a step, and by its name on paper. */
function partName({ book, say }: ViewContext, part: string): string {
  const name = itemName(book, part);
  return name === part ? say(part) : name;
}

/** Size, length and number with the name; where the maker's data does not know the fastener, the size is to be written beside. */
function fastenersOf(context: ViewContext, ids: readonly string[]): Text | undefined {
  const named = ids.map((id) => fastenerNamed(context.book, id));
  const unknown = context.say('size beside');
  const [only, another] = named;
  // The step says what it is about; one kind of fastener alone needs its name only where it has no size.
  if (only !== undefined && another === undefined && only.size !== '') return fastenersText(context, [only.size]);
  return fastenersText(
    context,
    named.map(({ name, size }) => (size === '' ? `${name} (${unknown})` : `${size} ${name}`)),
  );
}

function fastenersText({ say }: ViewContext, named: readonly string[]): Text | undefined {
  if (named.length === 0) return undefined;
  return [{ kind: 'strong', text: `${say('Fasteners')}: ` }, named.join('; ')];
}

function stepRows(context: ViewContext, one: NumberedStep): readonly Row[] {
  const { step, procedure } = one;
  const { job } = context;
  const say = (text: string): string => ours(context, procedure.at, text);
  const nameOf = (part: string): string => partName({ ...context, say }, part);
  const parts = step.off.length === 0 ? [undefined] : step.off;
  const rows = parts.map((part, index): Row => {
    const both: readonly Cell[] = part === undefined ? [stepTick(context, one), {}] : ticks(context, part);
    const name: Inline[] = part === undefined ? [] : [{ kind: 'strong', text: nameOf(part) }];
    const note = lineAt(context, noteId(index === 0 ? stepId(one.place) : partId(job?.id ?? '', part ?? '', 'off')));
    if (index > 0) return { kind: 'cells', cells: [...both, {}, { text: name }, {}, note] };
    const bag: Cell = one.bag === undefined ? {} : { text: count(one.bag), big: true };
    const does = joined([name, stepText(context, one)], ': ');
    return { kind: 'cells', cells: [...both, { text: count(one.number) }, { text: does }, bag, note] };
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
  return joined([say(step.do), note, way, fastenersOf(context, step.fasteners)], '. ');
}

function stepTick(context: ViewContext, one: NumberedStep): Cell {
  const id = stepId(one.place);
  const asks = ours(context, one.procedure.at, one.step.do);
  return { ...tickAt(context, id), about: { asks } };
}

/** What goes wrong is written down where it happens, in three columns side by side. */
function honest({ say, job }: ViewContext): readonly Block[] {
  const heads = ['Missing when found', 'Broken by me', 'Sent out: to whom, promised for'];
  return [
    {
      type: 'grid',
      id: `${job?.id ?? ''}/honest`,
      columns: heads.map((head) => column(say(head), 4)),
      rows: 2,
    },
  ];
}
