// `add`: a job is planned from procedures or from a title alone; its record appears, ready to print and to fill in.
import { mkdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { readDay, stops, type Binder } from '../build.ts';
import { planRecord, proceduresFor, type Planned } from '../entry/plan-record.ts';
import { jobKinds } from '../records/kinds/job.ts';
import type { Asker } from './asker.ts';
import { addRides } from './add/add-rides.ts';
import { askPlan } from './add/ask-plan.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { oneMachine } from './one-machine.ts';
import { nearest } from './nearest.ts';
import type { Options } from './program.ts';
import { readMachine, type ReadMachine } from './read-machine.ts';
import { reportProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { writeFault } from './write-fault.ts';
import { sweepHalves, writeWhole } from './write-whole.ts';

export interface AddOptions extends Options {
  readonly title?: string;
  readonly date?: string;
  readonly kind?: string;
  readonly for?: string;
  readonly hands?: string;
  readonly reading?: readonly string[];
  readonly part?: readonly string[];
  readonly name?: string;
}

/** What is asked for, before it is looked at. */
export interface Asked {
  readonly procedures: readonly string[];
  readonly title?: string;
  readonly date?: string;
  readonly for?: string;
}

/** Runs `splitpin add`. */
export async function addCommand(
  folder: string,
  procedures: readonly string[],
  options: AddOptions,
  around: Surroundings,
  asker: Asker,
): Promise<ExitCode> {
  const { terminal } = around;
  const machine = oneMachine(folder, around);
  if (typeof machine === 'number') return machine;
  const today = dayFor(options.today, around);
  const read = readMachine(machine, today, {});
  if (read.binder === undefined) {
    await reportProblems(stops(read.problems), read.textOf, terminal);
    terminal.tell('A job cannot be planned before the machine itself can be read.');
    return exitCodes.problems;
  }
  const { book } = read.binder;
  if (procedures[0] === 'list') return listProcedures(book, around);
  if (procedures[0] === 'rides') return addRides(machine, today, around, asker);
  const given: Asked = { procedures, ...options };
  const asks = procedures.length === 0 && options.title === undefined;
  const asked = asks ? await askPlan(book, given, today, asker, terminal) : given;
  asker.close();
  if (asked === undefined) {
    terminal.tell('Nothing was planned. Name procedures (splitpin add <folder> list), or give a --title.');
    return exitCodes.usage;
  }
  const planned = look(book, asked, options, today);
  if (!planned.ok) {
    for (const line of planned.why) terminal.tell(line);
    return exitCodes.usage;
  }
  return put({ machine, read, folder, around, today }, planned.value);
}

type Book = Binder['book'];
type Looked = { readonly ok: true; readonly value: Planned } | { readonly ok: false; readonly why: readonly string[] };

/** Everything that is wrong with what was asked, at once. */
function look(book: Book, asked: Asked, options: AddOptions, today: string): Looked {
  const known = new Map(proceduresFor(book).map((one) => [one.id, one]));
  const why = asked.procedures.flatMap((id) => {
    if (known.has(id)) return [];
    const [near] = nearest(id, [...known.keys()]);
    const other = book.content.procedures.has(id)
      ? `${id} is not for this machine.`
      : `There is no procedure called “${id}”.`;
    return [`${other}${near === undefined ? '' : ` The nearest: ${near}.`} All of them: splitpin add <folder> list`];
  });
  const date = readDay(asked.date ?? today);
  if (!date.ok) why.push(`The date: ${date.why.message}. Write it as 2026-11-28.`);
  const kind = jobKinds.find((one) => one === options.kind);
  if (options.kind !== undefined && kind === undefined)
    why.push(`“${options.kind}” is not a kind of job: ${jobKinds.join(', ')}.`);
  if (options.name !== undefined && !/^[\p{L}\p{N}][\p{L}\p{N}._-]*$/u.test(options.name))
    why.push('The name of a record: letters, digits, hyphens and points.');
  if (why.length > 0 || !date.ok) return { ok: false, why };
  const hands = (options.hands ?? '')
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '');
  const { title, for: purpose } = asked;
  return {
    ok: true,
    value: {
      procedures: asked.procedures.flatMap((id) => known.get(id) ?? []),
      date: date.value,
      hands,
      readings: options.reading ?? [],
      parts: options.part ?? [],
      ...(title === undefined || title === '' ? {} : { title }),
      ...(purpose === undefined || purpose === '' ? {} : { purpose }),
      ...(kind === undefined ? {} : { kind }),
      ...(options.name === undefined ? {} : { name: options.name }),
    },
  };
}

interface Place {
  readonly machine: string;
  readonly read: ReadMachine;
  /** As it was named on the command line. */
  readonly folder: string;
  readonly around: Surroundings;
  readonly today: string;
}

function put({ machine, read, folder, around, today }: Place, planned: Planned): ExitCode {
  const { terminal } = around;
  if (read.binder === undefined) return exitCodes.problems;
  const { id, file, text } = planRecord(read.binder.book, planned);
  const path = join(machine, file);
  try {
    mkdirSync(join(machine, 'jobs'), { recursive: true });
    sweepHalves(join(machine, 'jobs'));
    if (writeWhole(path, text, undefined) === 'changed') {
      terminal.tell(
        `There is a file ${relative(around.folder, path)} already; it was not touched. Give another --name.`,
      );
      return exitCodes.usage;
    }
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    terminal.tell(told);
    return exitCodes.writing;
  }
  terminal.say(`Planned: ${relative(around.folder, path)}`);
  const now = readMachine(machine, today, {});
  const sheets = now.binder?.sheets.filter((sheet) => sheet.job === id).length ?? 0;
  if (sheets > 0) {
    terminal.say(`Print its sheets:        splitpin print ${folder} ${id}`);
    terminal.say(`Type in what was done:   splitpin fill ${folder} ${id}`);
  }
  return exitCodes.fine;
}

function listProcedures(book: Book, { terminal }: Surroundings): ExitCode {
  for (const { id, title } of proceduresFor(book)) terminal.say(`${id.padEnd(28)} ${title}`);
  return exitCodes.fine;
}
