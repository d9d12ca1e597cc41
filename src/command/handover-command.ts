// `handover`: a package for the next owner. Shown first, written aside, looked through, and swapped in whole or not at all.
import { basename, dirname, resolve } from 'node:path';
import { buyersCopy, type BuyersCopy } from '../handover/buyers-copy.ts';
import { claimOutput } from '../cache/claim.ts';
import { sweep } from '../cache/sweep.ts';
import { stops } from '../build.ts';
import { patternOf } from '../handover/private-value.ts';
import type { Records } from '../records/model.ts';
import { readRecords } from '../records/read.ts';
import type { Asker } from './asker.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { oneMachine } from './one-machine.ts';
import { otherMachinesNear } from './handover/other-machines.ts';
import { whatGoes } from './handover/what-goes.ts';
import { writePackage } from './handover/write-package.ts';
import { defaultOut } from './places.ts';
import { readMachine, type ReadMachine } from './read-machine.ts';
import { reportFolderProblems, reportProblems, tellStopped } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';

/** As the command line gives them. */
export interface HandoverOptions {
  readonly out?: string;
  /** Name of the package; without it, the machine folder's. */
  readonly name?: string;
  readonly today?: string;
  readonly withoutPrices?: boolean;
  /** Words that look private and may go. */
  readonly mayGo?: readonly string[];
  readonly show?: boolean;
  readonly yes?: boolean;
}

/** Runs `splitpin handover`. `step` is told of each step before it begins; tests break it off there. */
export async function handoverCommand(
  folder: string,
  options: HandoverOptions,
  around: Surroundings,
  asker: Asker,
  step: (name: string) => void = () => undefined,
): Promise<ExitCode> {
  const { terminal } = around;
  const machine = oneMachine(folder, around, 'Name the folder of the machine that is handed over:');
  if (typeof machine === 'number') return machine;
  const today = dayFor(options.today, around);
  const read = readMachine(machine, today, {});
  const records = readRecords(read.folder.files, read.folder.assets, read.folder.shared).value;
  if (records === undefined || stops(read.problems).length > 0) return cannot(read, around);
  const name = options.name ?? `${read.folder.name}-package`;
  const copy = copyOf(read, records, options);
  const refused = [...copy.refused, ...nameRefused(name, copy)];
  if (refused.length > 0) return refuse(refused, around);
  for (const line of whatGoes(copy, records, options.withoutPrices === true)) terminal.say(line);
  if (!(await agreed(options, around, asker))) return exitCodes.fine;
  const base = `${read.folder.name}-handover`;
  const wanted =
    options.out === undefined ? defaultOut(machine, base, around.folder) : resolve(around.folder, options.out);
  sweep(wanted);
  const claimed = claimOutput(wanted, machine);
  if (claimed.value === undefined) return reportFolderProblems(claimed.problems, terminal);
  const withoutPrices = options.withoutPrices === true;
  return writePackage({ copy, read, name, out: claimed.value, today, withoutPrices, terminal, step });
}

function copyOf(read: ReadMachine, records: Records, options: HandoverOptions): BuyersCopy {
  const { files, shared, assets, folder } = read.folder;
  return buyersCopy(
    { files, shared, assets, records },
    {
      withoutPrices: options.withoutPrices === true,
      mayGo: options.mayGo ?? [],
      otherMachines: otherMachinesNear(dirname(folder), basename(folder)),
    },
  );
}

/** A name of a package and of the machine folder in it is read by everybody. */
function nameRefused(name: string, copy: BuyersCopy): readonly string[] {
  if (!/^[\p{L}\p{N}][\p{L}\p{N}._-]*$/u.test(name))
    return [`“${name}” cannot be the name of a package: letters, digits, hyphens and points can.`];
  const held = copy.hunted.filter(({ text }) => patternOf(text, true)?.test(name) === true);
  return held.map(({ what, text }) => `The name ${name} holds ${what} (${text}): give another with --name.`);
}

async function agreed(options: HandoverOptions, around: Surroundings, asker: Asker): Promise<boolean> {
  try {
    if (options.show === true) return false;
    if (options.yes === true) return true;
    const line = await asker.ask('Write the package? (yes or no): ');
    if (line === undefined && !asker.atTerminal) around.terminal.tell('Nothing was written. Write it with --yes.');
    return line !== undefined && /^y(?:es)?$/iu.test(line.trim());
  } finally {
    asker.close();
  }
}

function refuse(lines: readonly string[], { terminal }: Surroundings): ExitCode {
  for (const line of lines) terminal.tell(line);
  terminal.tell('Nothing was written.');
  return exitCodes.problems;
}

async function cannot(read: ReadMachine, { terminal }: Surroundings): Promise<ExitCode> {
  await reportProblems(stops(read.problems), read.textOf, terminal);
  tellStopped(stops(read.problems), `to put right in ${read.folder.name}; nothing was written.`, terminal);
  return exitCodes.problems;
}
