// May this folder be replaced by a binder? Only when it is ours, empty, or not there yet.
import { accessSync, constants, mkdirSync, readdirSync, realpathSync, statSync } from 'node:fs';
import { dirname, relative, resolve, sep } from 'node:path';
import type { Outcome, Problem } from '../problem/problem.ts';
import type { ProblemCode } from '../problem/codes.ts';
import { isOurs } from './manifest.ts';

/** The output folder as it will be replaced (links resolved), or why it will not be touched. */
export function claimOutput(path: string, machine: string): Outcome<string | undefined> {
  const wanted = resolve(path);
  const stat = statSync(wanted, { throwIfNoEntry: false });
  const out = stat === undefined ? wanted : realpathSync(wanted);
  if (isWithin(out, machine)) return refuse('output-in-machine-folder', path, inMachine, elsewhere);
  if (isWithin(machine, out)) return refuse('output-not-ours', path, holdsMachine, elsewhere);
  if (stat !== undefined && !stat.isDirectory()) return refuse('output-not-ours', path, isAFile, elsewhere);
  if (stat !== undefined && !isOurs(out) && !isEmpty(out)) return refuse('output-not-ours', path, notOurs, elsewhere);
  if (!canWrite(dirname(out))) return refuse('output-not-writable', path, notWritable, elsewhere);
  return { value: out, problems: [] };
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

function refuse(code: ProblemCode, file: string, message: string, hint: string): Outcome<undefined> {
  const problem: Problem = { code, severity: 'problem', at: { file, path: [] }, message, hint };
  return { value: undefined, problems: [problem] };
}

function isEmpty(folder: string): boolean {
  return readdirSync(folder).length === 0;
}

function canWrite(folder: string): boolean {
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK | constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
