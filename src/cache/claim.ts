// May this folder be replaced by a binder? Only when it is ours, empty, or not there yet.
import { accessSync, constants, mkdirSync, readdirSync, realpathSync, statSync, type Stats } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';
import type { Outcome, Problem } from '../problem/problem.ts';
import type { ProblemCode } from '../problem/codes.ts';
import { isOurs } from './manifest.ts';

/** The output folder as it will be replaced (links resolved), or why it will not be touched. */
export function claimOutput(path: string, machine: string): Outcome<string | undefined> {
  const wanted = resolve(path);
  const stat = statOf(wanted);
  const out = truePath(wanted);
  if (isWithin(out, machine)) return refuse('output-in-machine-folder', path, inMachine, elsewhere);
  if (isWithin(machine, out)) return refuse('output-not-ours', path, holdsMachine, elsewhere);
  if (stat !== undefined && !stat.isDirectory()) return refuse('output-not-ours', path, isAFile, elsewhere);
  if (stat !== undefined && !isOurs(out) && !isEmpty(out)) return refuse('output-not-ours', path, notOurs, elsewhere);
  if (!canWrite(dirname(out))) return refuse('output-not-writable', path, notWritable, elsewhere);
  return { value: out, problems: [] };
}

/** Why loose files cannot go into a folder; undefined when they can. Other files in it are left alone. */
export function refuseLooseFiles(path: string, machine: string): Problem | undefined {
  const folder = truePath(resolve(path));
  if (isWithin(folder, machine)) return problem('output-in-machine-folder', path, inMachine, elsewhere);
  return canWrite(folder) ? undefined : problem('output-not-writable', path, notWritable, elsewhere);
}

/** The path with links resolved as far as it is there: a folder still to be made can lie behind a link too. */
function truePath(path: string): string {
  if (statOf(path) !== undefined) return realpathSync(path);
  return dirname(path) === path ? path : join(truePath(dirname(path)), basename(path));
}

/** True when `inner` is `outer` or lies below it. */
export function isWithin(inner: string, outer: string): boolean {
  const way = relative(outer, inner);
  return way === '' || (way !== '..' && !way.startsWith('..' + sep));
}

const elsewhere = 'Give another folder with --out.';
const inMachine = 'The output folder lies inside the machine folder, which holds your records and nothing else.';
const holdsMachine = 'The machine folder lies inside the output folder, which would be replaced.';
const isAFile = 'There is a file where the output folder should go.';
const notOurs = 'The output folder holds files that this program did not make; it was not touched.';
const notWritable = 'The output folder cannot be made: its place cannot be written to.';

function refuse(...why: Parameters<typeof problem>): Outcome<undefined> {
  return { value: undefined, problems: [problem(...why)] };
}

function problem(code: ProblemCode, file: string, message: string, hint: string): Problem {
  return { code, severity: 'problem', at: { file, path: [] }, message, hint };
}

/** Undefined as well where the way to it leads through a file or a closed folder. */
function statOf(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}

function isEmpty(folder: string): boolean {
  return readdirSync(folder).length === 0;
}

/** True when the folder is there or could be made. One step at a time: some file systems keep the recursive way of doing it busy for ever. */
function canWrite(folder: string): boolean {
  try {
    makeFolder(folder);
    accessSync(folder, constants.W_OK | constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function makeFolder(folder: string): void {
  const isThere = (): boolean => statOf(folder)?.isDirectory() === true;
  if (isThere()) return;
  if (dirname(folder) !== folder) makeFolder(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (cause) {
    // The first machines of a workshop are begun together: another thread may have made it between the two.
    if (!isThere()) throw cause;
  }
}
