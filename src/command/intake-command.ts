// `intake`: a dozen questions make a new machine folder, with its intake planned and the sheets for it printed.
import { readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { stops } from '../build.ts';
import type { Asker } from './asker.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { editorSchemas } from './editor-schemas.ts';
import { answersIn, hearAll, nothingSaid, type AllHeard } from './intake/hear-all.ts';
import { newFolder, type NewFolder } from './intake/machine-folder.ts';
import { isTaken, putInPlace } from './intake/put-in-place.ts';
import type { Options } from './program.ts';
import { readMachine } from './read-machine.ts';
import { reportProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { writeFault } from './write-fault.ts';

/** Answers as options, by the ids of the questions; `answers` names a file of them. */
export interface IntakeOptions extends Options {
  readonly name?: string;
  readonly answers?: string;
  readonly given: Readonly<Record<string, string>>;
}

/** Runs `splitpin intake`. */
export async function intakeCommand(
  wanted: string | undefined,
  options: IntakeOptions,
  around: Surroundings,
  asker: Asker,
): Promise<ExitCode> {
  const { terminal } = around;
  if (wanted !== undefined && isTaken(resolve(around.folder, wanted))) return taken(wanted, around);
  const file = options.answers === undefined ? undefined : readAnswers(resolve(around.folder, options.answers));
  if (file !== undefined && !file.ok) {
    terminal.tell(file.why);
    return exitCodes.usage;
  }
  const given = { ...file?.answers, ...options.given };
  if (file === undefined && asker.atTerminal)
    terminal.tell('Enter alone leaves a question for later; Ctrl+C makes nothing.');
  const heard = await hearAll(given, file === undefined ? asker : undefined, (line) => terminal.tell(line)).finally(
    () => asker.close(),
  );
  if (!heard.ok) {
    for (const line of heard.why) terminal.tell(line);
    terminal.tell('Nothing was made.');
    return exitCodes.usage;
  }
  const said = Object.keys(heard.facts).length + heard.besides.length;
  if (asker.interrupted() || (said === 0 && options.name === undefined)) {
    terminal.tell(nothingSaid);
    return exitCodes.usage;
  }
  const name = options.name ?? given['name'];
  const today = dayFor(options.today, around);
  const made = newFolder({ ...heard.facts, ...(name === undefined ? {} : { name }) }, today, heard.besides);
  const folder = resolve(around.folder, wanted ?? folderName(made.name));
  if (isTaken(folder)) return taken(relative(around.folder, folder), around);
  const written = await writeFolder(folder, made, today, around);
  if (written !== exitCodes.fine) return written;
  tellMade(folder, made, heard, around);
  return printIntake(folder, made, options, around);
}

function readAnswers(path: string): ReturnType<typeof answersIn> {
  try {
    return answersIn(readFileSync(path, 'utf8'));
  } catch {
    return { ok: false, why: `The file of answers cannot be opened: ${path}` };
  }
}

function taken(folder: string, { terminal }: Surroundings): ExitCode {
  terminal.tell(
    `There is something called ${folder} already; it was not touched. Give another folder: splitpin intake NAME`,
  );
  return exitCodes.usage;
}

/** A folder's name that is easy to type: small letters, digits, hyphens. */
function folderName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/gu, '')
    .slice(0, 60);
  return plain === '' ? 'machine' : plain;
}

async function writeFolder(folder: string, made: NewFolder, today: string, around: Surroundings): Promise<ExitCode> {
  const look = async (half: string): Promise<boolean> => {
    const read = readMachine(half, today, {});
    const wrong = stops(read.problems).filter((problem) => !problem.at.file.startsWith('content/'));
    await reportProblems(wrong, read.textOf, around.terminal);
    return wrong.length === 0;
  };
  try {
    const put = await putInPlace(folder, { ...made.files, ...editorSchemas() }, look);
    if (put) return exitCodes.fine;
    around.terminal.tell('Nothing was made.');
    return exitCodes.problems;
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    around.terminal.tell(told);
    return exitCodes.writing;
  }
}

function tellMade(
  folder: string,
  made: NewFolder,
  { later, besides }: Extract<AllHeard, { readonly ok: true }>,
  { terminal, folder: here }: Surroundings,
): void {
  const way = wayTo(folder, here);
  terminal.say(`${made.name}: a new machine folder, ${way}`);
  for (const file of Object.keys(made.files)) terminal.say('  ' + join(way, file));
  if (besides.length > 0) {
    terminal.say(`Kept in words, in ${join(way, 'jobs', `${made.job}.md`)}:`);
    for (const { question, words, why } of besides)
      terminal.say(`  ${question}: ${words}${why === undefined ? '' : `. ${why} Write it in machine.yaml.`}`);
  }
  if (later.length === 0) return;
  terminal.say(`Left for later, as ? in ${join(way, 'machine.yaml')}:`);
  for (const line of later) terminal.say('  ' + line);
}

async function printIntake(folder: string, made: NewFolder, options: Options, around: Surroundings): Promise<ExitCode> {
  const { printCommand } = await import('./print-command.ts');
  terminalLine(around, 'Print these and go to the machine before anything is cleaned or moved:');
  const sheets = ['intake', `measuring-${made.job}`];
  let worst: ExitCode = exitCodes.fine;
  for (const sheet of sheets) {
    const code = await printCommand(folder, sheet, options, around);
    if (code > worst) worst = code;
  }
  const way = wayTo(folder, around.folder);
  terminalLine(around, `Afterwards: splitpin fill ${way} ${made.job}, then splitpin build ${way}`);
  return worst;
}

function terminalLine({ terminal }: Surroundings, line: string): void {
  terminal.say(line);
}

function wayTo(folder: string, here: string): string {
  const way = relative(here, folder);
  return way === '' || way.startsWith('..') ? folder : way;
}
