// The first page of a workshop: every machine with how it stands, what is held, due and to get across all of them, and what moved between them.
import type { FolderQuery } from '../book/workshop-looks.ts';
import type { Content } from '../records/content-model.ts';
import { speaker } from '../sheet/dialect.ts';
import type { Block, Inline, Page, Text } from '../sheet/sheet.ts';
import { column, heading, joined, lines, row, stack } from '../views/wording/blocks.ts';
import { count, countOf } from '../views/wording/count.ts';
import { withDates } from '../views/wording/day.ts';
import type { FrontLines } from './front-lines.ts';
import {
  dueTable,
  heldTable,
  into,
  movedWorths,
  movesTable,
  nameIn,
  shelf,
  shoppingTable,
  type Say,
} from './workshop-lists.ts';

/** A machine that has no new binder: its records have problems, or it could not be written. */
export interface StoppedMachine {
  readonly folder: string;
  /** What it is called, where its machine.yaml could be read. */
  readonly name?: string;
  readonly problems: number;
}

export interface WorkshopFacts {
  /** Machines with a new binder, in the order of their folders. A reference `machine:<folder>/<file>` leads into one. */
  readonly machines: readonly FrontLines[];
  readonly stopped: readonly StoppedMachine[];
  readonly asked: readonly FolderQuery[];
  /** Pairs of words of both dialects. */
  readonly words: Content['words'];
}

/** Makes the page. The first machine’s spelling is that of the page. */
export function composeWorkshop(facts: WorkshopFacts): Page {
  const [first] = facts.machines;
  const say: Say = first === undefined ? (words) => words : speaker(facts.words, first.spelling);
  return {
    file: 'index.html',
    title: say('The workshop'),
    section: 'workshop',
    blocks: stack(
      heading(2, say('The machines'), 'machines'),
      machineTable(facts, say),
      stoppedLines(facts.stopped, say),
      heading(2, say('Held'), 'held'),
      heldTable(facts.machines, say),
      heading(2, say('Due or overdue'), 'due'),
      dueTable(facts.machines, say),
      heading(2, say('To get'), 'to-get'),
      shoppingTable(facts.machines, say),
      heading(2, say('Moved between machines'), 'moved'),
      movesTable(facts.machines, say),
      movedWorths(facts.machines, say),
      betweenLines(facts, say),
      shelf(facts.machines, say),
      first?.instruments ?? [],
    ),
  };
}

function machineTable({ machines }: WorkshopFacts, say: Say): Block {
  const name = nameIn(machines);
  return {
    type: 'table',
    columns: [
      column(say('Machine'), 5),
      column(say('Records up to'), 3),
      column(say('Held'), 2, 'right'),
      column(say('Off or open'), 2, 'right'),
      column(say('Due'), 2, 'right'),
      column(say('To look at'), 2, 'right'),
    ],
    rows: machines.map((one) => {
      const number = (file: string, all: number): Text => into(one.folder, file, count(all));
      return row(
        into(one.folder, 'index.html', name(one)),
        one.recordsUpTo === '' ? say('no record yet') : one.recordsUpTo,
        number('hold-points.html', one.held.length),
        number('off.html', one.off),
        one.scheduled ? number('service.html', one.due) : into(one.folder, 'service.html', say('not known')),
        number('problems.html', one.queries),
      );
    }),
    empty: say('No machine could be read.'),
    use: 'read',
  };
}

function stoppedLines(stopped: readonly StoppedMachine[], say: Say): readonly Block[] {
  if (stopped.length === 0) return [];
  const told = stopped.map(({ folder, name, problems }): Text => [
    { kind: 'strong', text: name === undefined ? folder : `${name} (${folder})` },
    `: ${say('not made anew')}${
      problems === 0 ? '' : `, ${countOf(problems, say('problem'), say('problems'))} ${say('in its records')}`
    }`,
  ]);
  const text = say(
    'What was made of them before, if anything, stands as it was, and nothing of them is counted below.',
  );
  return [{ type: 'caution', grade: 'NOTE', text }, lines(told)];
}

function betweenLines({ asked }: WorkshopFacts, say: Say): readonly Block[] {
  if (asked.length === 0) return [];
  return [
    heading(2, say('Between the machines, for a person to look at'), 'between'),
    lines(
      asked.map(({ folder, problem }) =>
        joined([withDates(`${folder}: ${problem.message}`), coded(problem.hint ?? '')]),
      ),
    ),
  ];
}

/** Words to be written as they stand are between grave accents in a hint. */
function coded(hint: string): Text {
  const pieces = hint.split('`').map((text, index): Inline => (index % 2 === 1 ? { kind: 'code', text } : text));
  return pieces.filter((piece) => piece !== '');
}
