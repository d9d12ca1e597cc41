// Clears up after runs that were killed: their folders aside go, and an output folder caught between two renames comes back, whole.
import { readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { asidePrefix } from './aside.ts';
import { isOurs } from './manifest.ts';
import { giveBack } from './whole-folders.ts';

/**
 * Sweeps the folder around an output folder. Only folders that carry our mark, or hold nothing because their run was killed before
 * it could set it, and whose process is dead are touched.
 */
export function sweep(out: string): void {
  for (const left of leftovers(out)) {
    const path = join(dirname(out), left.name);
    if (isAlive(left.process) || !(isOurs(path) || isEmptyFolder(path))) continue;
    const lost = left.old && statSync(out, { throwIfNoEntry: false }) === undefined;
    if (lost) {
      giveBack(path, path.slice(0, -'-old'.length));
      renameSync(path, out);
    } else rmSync(path, { recursive: true, force: true });
  }
}

function isEmptyFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true && namesIn(path).length === 0;
}

interface Leftover {
  readonly name: string;
  readonly process: number;
  /** The former output folder, set aside by a swap. */
  readonly old: boolean;
}

function leftovers(out: string): readonly Leftover[] {
  const around = dirname(out);
  const prefix = asidePrefix(out);
  const names = namesIn(around).filter((name) => name.startsWith(prefix));
  const found = names.flatMap((name) => {
    const match = /^(\d+)-\w{6}(-old)?$/.exec(name.slice(prefix.length));
    return match === null ? [] : [{ name, process: Number(match[1]), old: match[2] !== undefined }];
  });
  // Former output folders first, so that a lost one is restored before anything is removed.
  return found.sort((a, b) => Number(b.old) - Number(a.old));
}

/** Nothing where there is no folder yet, or none that may be looked into. */
function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function isAlive(id: number): boolean {
  if (id === process.pid) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (cause) {
    return cause instanceof Error && 'code' in cause && cause.code === 'EPERM';
  }
}
