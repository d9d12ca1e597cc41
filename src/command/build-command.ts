// `build`: one machine or a workshop of them; what has not changed since the last build is not even loaded.
import { realpathSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { claimOutput } from '../cache/claim.ts';
import { readLastBuild, type LastBuild } from '../cache/manifest.ts';
import { sweep } from '../cache/sweep.ts';
import { isUnchanged } from '../cache/unchanged.ts';
import { findMachines, stampsOf } from '../disk.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { defaultOut } from './places.ts';
import type { Options } from './program.ts';
import { programHash } from './program-version.ts';
import { reportFolderProblems } from './report-problems.ts';
import { withWay } from './said-at-the-end.ts';
import { dayFor, type Surroundings } from './surroundings.ts';

/** What one machine's build is asked for. */
export interface BuildJob {
  readonly machine: string;
  /** Output folder as the owner would write it. */
  readonly out: string;
  readonly today: string;
  readonly options: Options;
  readonly program: string;
  /** The choices in one text: another choice is another build. */
  readonly choices: string;
}

/** Runs `splitpin build`. */
export async function buildCommand(folder: string, options: Options, around: Surroundings): Promise<ExitCode> {
  const found = findMachines(resolve(around.folder, folder));
  if (found.value.length === 0) return reportFolderProblems(found.problems, around.terminal);
  const program = programHash();
  const today = dayFor(options.today, around);
  const { paper, bothSides, workings, withoutData, siteOnly } = options;
  const choices = JSON.stringify([today, paper, bothSides, workings, withoutData, siteOnly]);
  let worst: ExitCode = exitCodes.fine;
  for (const machine of found.value) {
    const out = outFor(machine, resolve(around.folder, folder), options, around.folder);
    const code = await buildMachine({ machine, out, today, options, program, choices }, around);
    if (code > worst) worst = code;
  }
  return worst;
}

/** A workshop's machines each get a folder of their own below the one that was named. */
function outFor(machine: string, folder: string, options: Options, current: string): string {
  const isWorkshop = machine !== realpathSync(folder);
  const base =
    options.out === undefined ? defaultOut(folder, basename(folder), current) : resolve(current, options.out);
  return isWorkshop ? join(base, basename(machine)) : base;
}

async function buildMachine(job: BuildJob, around: Surroundings): Promise<ExitCode> {
  sweep(job.out);
  const claimed = claimOutput(job.out, job.machine);
  if (claimed.value === undefined) return reportFolderProblems(claimed.problems, around.terminal);
  const last = readLastBuild(claimed.value);
  if (last !== undefined && sameAsLast(last, job)) {
    for (const line of withWay(last.manifest.said, claimed.value)) around.terminal.say(line);
    around.terminal.say('Nothing has changed since it was made; nothing was written.');
    return exitCodes.fine;
  }
  const { makeBinder } = await import('./make-binder.ts');
  return makeBinder({ ...job, out: claimed.value }, last, around.terminal);
}

function sameAsLast(last: LastBuild, job: BuildJob): boolean {
  const stamps = stampsOf(job.machine);
  return isUnchanged(last, { program: job.program, options: job.choices, folder: job.machine, stamps });
}
