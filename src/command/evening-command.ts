// `evening` and `to-get`: what can be done tonight, and what is bought on Saturday, said at the terminal or as plain data.
import { resolve } from 'node:path';
import { eveningData, eveningLines, shoppingData, shoppingLines, stops, type Binder } from '../build.ts';
import { findMachines } from '../disk.ts';
import { count } from './count.ts';
import { usualMinutes } from './describe-evening.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { readMachine } from './read-machine.ts';
import { reportFolderProblems, reportProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';

export interface EveningOptions {
  readonly minutes?: string;
  readonly helper?: boolean;
  readonly json?: boolean;
  readonly today?: string;
}

/** The binders of a folder as far as they can be read; what is wrong in records is told, and what it left out is counted. */
async function bindersIn(
  folder: string,
  options: EveningOptions,
  around: Surroundings,
): Promise<readonly Binder[] | ExitCode> {
  const { terminal } = around;
  const found = findMachines(resolve(around.folder, folder));
  if (found.value.length === 0) return reportFolderProblems(found.problems, terminal);
  const binders: Binder[] = [];
  for (const path of found.value) {
    const read = readMachine(path, dayFor(options.today, around), { siteOnly: true });
    const wrong = stops(read.problems);
    if (read.binder === undefined) await reportProblems(wrong, read.textOf, terminal);
    else binders.push(read.binder);
    if (wrong.length > 0 && read.binder !== undefined)
      terminal.tell(
        `${read.folder.name}: ${count(wrong.length, 'problem')} in the records; what is there was left out.`,
      );
  }
  return binders.length === 0 ? exitCodes.problems : binders;
}

/** Runs `splitpin evening`: a machine, or every machine of a workshop. */
export async function eveningCommand(folder: string, options: EveningOptions, around: Surroundings): Promise<ExitCode> {
  const binders = await bindersIn(folder, options, around);
  if (typeof binders === 'number') return binders;
  const asked = { minutes: Number(options.minutes ?? usualMinutes), helper: options.helper === true };
  if (options.json === true) {
    const all = binders.map(({ book }) => eveningData(book, asked));
    around.terminal.say(JSON.stringify(all.length === 1 ? all[0] : all, null, 2));
    return exitCodes.fine;
  }
  for (const { book } of binders) {
    if (binders.length > 1) around.terminal.say(`== ${book.records.machine.name}`);
    for (const line of eveningLines(book, asked)) around.terminal.say(line);
  }
  return exitCodes.fine;
}

/** Runs `splitpin to-get`: over all machines of a workshop, each thing bought once. */
export async function toGetCommand(folder: string, options: EveningOptions, around: Surroundings): Promise<ExitCode> {
  const binders = await bindersIn(folder, options, around);
  if (typeof binders === 'number') return binders;
  const books = binders.map(({ book }) => book);
  if (options.json === true) around.terminal.say(JSON.stringify(shoppingData(books), null, 2));
  else for (const line of shoppingLines(books)) around.terminal.say(line);
  return exitCodes.fine;
}
