// `build`: one machine or a workshop of them; what has not changed since the last build is not even loaded.
import { realpathSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { findMachines } from '../disk.ts';
import type { ExitCode } from './exit-codes.ts';
import { defaultOut } from './places.ts';
import type { Options } from './program.ts';
import { programHash } from './program-version.ts';
import { reportFolderProblems } from './report-problems.ts';
import { dayFor, type Surroundings } from './surroundings.ts';
import { buildMachine } from './workshop/machine-build.ts';

/** Runs `splitpin build`. */
export async function buildCommand(folder: string, options: Options, around: Surroundings): Promise<ExitCode> {
  const path = resolve(around.folder, folder);
  const { value: machines, problems } = findMachines(path);
  const [first] = machines;
  if (first === undefined) return reportFolderProblems(problems, around.terminal);
  const { paper, bothSides, workings, withoutData, siteOnly } = options;
  const today = dayFor(options.today, around);
  const asked = {
    today,
    options,
    program: programHash(),
    choices: JSON.stringify([today, paper, bothSides, workings, withoutData, siteOnly]),
  };
  const out =
    options.out === undefined ? defaultOut(path, basename(path), around.folder) : resolve(around.folder, options.out);
  const workshop = realpathSync(path);
  if (first === workshop) return (await buildMachine({ ...asked, machine: first, out }, around.terminal)).code;
  // A workshop's machines each get a folder of their own below the one that was named.
  const jobs = machines.map((machine) => ({ ...asked, machine, out: join(out, basename(machine)) }));
  const { buildWorkshop } = await import('./workshop/workshop-build.ts');
  return buildWorkshop({ folder: workshop, out, jobs }, around.terminal);
}
