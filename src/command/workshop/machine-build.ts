// One machine's binder, made or found unchanged: alone in this thread, or as one of a workshop's in another.
import { claimOutput } from '../../cache/claim.ts';
import { readLastBuild, type LastBuild } from '../../cache/manifest.ts';
import { sweep } from '../../cache/sweep.ts';
import { isUnchanged } from '../../cache/unchanged.ts';
import { stampsOf } from '../../disk.ts';
import { exitCodes, type ExitCode } from '../exit-codes.ts';
import type { Options } from '../program.ts';
import type { ReadMachine } from '../read-machine.ts';
import { reportFolderProblems } from '../report-problems.ts';
import { withWay } from '../said-at-the-end.ts';
import type { Terminal } from '../terminal.ts';

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
  /** Threads that print; without it, as many as pay. In a workshop each core has a whole machine to make. */
  readonly printThreads?: number;
}

/** True when the binder that stands there is what a build would give. */
export function standsAsMade(job: BuildJob): boolean {
  const { value: out } = claimOutput(job.out, job.machine);
  const last = out === undefined ? undefined : readLastBuild(out);
  return last !== undefined && sameAsLast(last, job);
}

export interface BuiltMachine {
  readonly code: ExitCode;
  /** What was read for it; absent where nothing had to be. */
  readonly read?: ReadMachine;
}

/** Makes the binder, unless nothing has changed since it was made. */
export async function buildMachine(job: BuildJob, terminal: Terminal): Promise<BuiltMachine> {
  sweep(job.out);
  const claimed = claimOutput(job.out, job.machine);
  if (claimed.value === undefined) return { code: reportFolderProblems(claimed.problems, terminal) };
  const last = readLastBuild(claimed.value);
  if (last !== undefined && sameAsLast(last, job)) {
    for (const line of withWay(last.manifest.said, claimed.value)) terminal.say(line);
    terminal.say('Nothing has changed since it was made; nothing was written.');
    return { code: exitCodes.fine };
  }
  const { makeBinder } = await import('../make-binder.ts');
  return makeBinder({ ...job, out: claimed.value }, last, terminal);
}

function sameAsLast(last: LastBuild, job: BuildJob): boolean {
  const { program, choices: options, machine: folder } = job;
  const asked = {
    program,
    options,
    folder,
    // Another day or another program is another build, and then no file need be looked at.
    get stamps() {
      return stampsOf(folder);
    },
  };
  return isUnchanged(last, asked);
}
