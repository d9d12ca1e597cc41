// The folder of one machine, for commands that work on one; of a workshop its machines are named.
import { relative, resolve } from 'node:path';
import { findMachines } from '../disk.ts';
import { exitCodes, type ExitCode } from './exit-codes.ts';
import { reportFolderProblems } from './report-problems.ts';
import type { Surroundings } from './surroundings.ts';

/** The machine folder that was named, or the exit code after it was said why there is none. */
export function oneMachine(
  folder: string,
  around: Surroundings,
  asked = 'Name the folder of one machine:',
): string | ExitCode {
  const { terminal } = around;
  const found = findMachines(resolve(around.folder, folder));
  const [machine, ...others] = found.value;
  if (machine === undefined) return reportFolderProblems(found.problems, terminal);
  if (others.length === 0) return machine;
  terminal.tell(`This is a workshop. ${asked}`);
  for (const one of found.value) terminal.tell(`  ${relative(around.folder, one) || one}`);
  return exitCodes.usage;
}
