// `adopt`: a package becomes a machine folder of the new owner. Verified first, written aside, read as a stranger's, and named at the end or not at all.
import { existsSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { checkPackage, type CheckedPackage } from '../handover/check-package.ts';
import { nameFault } from '../source/file-names.ts';
import { machineIn, type PackagedMachine } from './adopt/package-machine.ts';
import { beginBeside } from './adopt/new-folder.ts';
import { takeOverMachine, type Adopting } from './adopt/take-over.ts';
import type { Asker } from './asker.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { onInterrupt } from './interrupt.ts';
import { hashedFiles, openPackage, topTexts, type OpenPackage } from './open-package.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { faultLine } from './verify-command.ts';
import { writeFault } from './write-fault.ts';

/** As the command line gives them. */
export interface AdoptOptions {
  readonly today?: string;
  /** What was left out and is said beforehand, by its name. */
  readonly how?: Readonly<Record<string, string>>;
}

/** Runs `splitpin adopt`. `step` is told of each step before it begins; tests break it off there. */
export async function adoptCommand(
  path: string,
  wanted: string | undefined,
  options: AdoptOptions,
  around: Surroundings,
  asker: Asker,
  step: (name: string) => void = () => undefined,
): Promise<ExitCode> {
  const opened = await openPackage(resolve(around.folder, path), path);
  if ('wrong' in opened) return refuse(opened.wrong, around);
  try {
    return await adopt({ path, opened, wanted, options, around, asker, step });
  } catch (cause) {
    const told = writeFault(cause);
    if (told === undefined) throw cause;
    around.terminal.tell(told);
    return exitCodes.writing;
  } finally {
    opened.close();
    asker.close();
  }
}

interface Work {
  readonly path: string;
  readonly opened: OpenPackage;
  readonly wanted: string | undefined;
  readonly options: AdoptOptions;
  readonly around: Surroundings;
  readonly asker: Asker;
  readonly step: (name: string) => void;
}

async function adopt(work: Work): Promise<ExitCode> {
  const { opened, around, step } = work;
  const { terminal } = around;
  step('verify');
  terminal.progress('Reading every file of the package');
  const files = await hashedFiles(opened);
  const texts = await topTexts(opened);
  terminal.progress('');
  const checked = checkPackage(files, (file) => texts.get(file));
  if (checked.faults.length > 0) {
    const way = relative(around.folder, resolve(around.folder, work.path)) || work.path;
    return refuse([...checked.faults.map(faultLine), `${way} is not as it was made.`], around);
  }
  const machine = machineIn(opened, checked.machineFolder);
  if ('wrong' in machine) return refuse(machine.wrong, around);
  const target = targetFor(machine, work);
  if (typeof target !== 'string') return refuse(target.wrong, around);
  return aside(target, machine, checked, new Map(files.map(({ path, hash }) => [path, hash])), work);
}

/** Where the machine folder goes: into a folder that is there and is no machine, or under the very name that was given. */
function targetFor(machine: PackagedMachine, { wanted, around }: Work): string | { readonly wrong: readonly string[] } {
  const given = resolve(around.folder, wanted ?? '.');
  const isFolder = statSync(given, { throwIfNoEntry: false })?.isDirectory() === true;
  const isMachine = existsSync(join(given, 'machine.yaml'));
  const target = isFolder && !isMachine ? join(given, machine.name) : given;
  const name = relative(around.folder, target) || target;
  const fault = nameFault(basename(target));
  if (fault !== undefined) return { wrong: [`The machine folder cannot be called “${basename(target)}”: ${fault}.`] };
  if (existsSync(target))
    return {
      wrong: [`There is something called ${name} already; it was not touched. Give another name after the package.`],
    };
  const inside = machineAround(dirname(target));
  return inside === undefined
    ? target
    : {
        wrong: [
          `${relative(around.folder, inside) || inside} is a machine folder: the new one goes beside it, not into it.`,
        ],
      };
}

/** The machine folder that a folder is, or lies in. */
function machineAround(folder: string): string | undefined {
  if (existsSync(join(folder, 'machine.yaml'))) return folder;
  return dirname(folder) === folder ? undefined : machineAround(dirname(folder));
}

async function aside(
  target: string,
  machine: PackagedMachine,
  checked: CheckedPackage,
  hashes: ReadonlyMap<string, string>,
  work: Work,
): Promise<ExitCode> {
  const made: string[] = [];
  const drop = (): void => made.forEach((half) => rmSync(half, { recursive: true, force: true }));
  const settled = onInterrupt(drop);
  try {
    work.step('begin');
    const half = beginBeside(target);
    made.push(half);
    const adopting: Adopting = {
      half,
      target,
      machine,
      hashes,
      fingerprint: checked.fingerprint,
      today: dayFor(work.options.today, work.around),
      how: work.options.how ?? {},
      around: work.around,
      asker: work.asker,
      step: work.step,
    };
    return await takeOverMachine(adopting);
  } finally {
    settled();
    drop();
  }
}

function refuse(lines: readonly string[], { terminal }: Surroundings): ExitCode {
  for (const line of lines) terminal.tell(line);
  terminal.tell('Nothing was adopted, and nothing was written.');
  return exitCodes.problems;
}
