// A machine folder taken from a package: written beside its place under a hidden name, and named at the end. Until then nothing is there.
import {
  chmodSync,
  closeSync,
  fsyncSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { sha256 } from '../fingerprint-of.ts';
import type { TakenFile } from './package-machine.ts';

/** Begins a folder beside its place. What runs that were killed left there goes. */
export function beginBeside(target: string): string {
  mkdirSync(dirname(target), { recursive: true });
  for (const left of leftovers(target)) rmSync(join(dirname(target), left), { recursive: true, force: true });
  const half = mkdtempSync(join(dirname(target), `${prefix(target)}${String(process.pid)}-`));
  chmodSync(half, 0o755);
  return half;
}

function prefix(target: string): string {
  return `.${basename(target)}-adopting-`;
}

function leftovers(target: string): readonly string[] {
  return readdirSync(dirname(target)).filter((name) => {
    const pid = /^(\d+)-\w{6}$/u.exec(name.startsWith(prefix(target)) ? name.slice(prefix(target).length) : '')?.[1];
    return pid !== undefined && !isRunning(Number(pid));
  });
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return cause instanceof Error && 'code' in cause && cause.code === 'EPERM';
  }
}

/**
 * Writes what a package holds, one file after the other, so that memory holds one at a time. Gives the first file that is not what it was
 * when the package was looked over, after which nothing more is written.
 */
export async function writeTaken(
  half: string,
  files: readonly TakenFile[],
  hashes: ReadonlyMap<string, string>,
): Promise<string | undefined> {
  for (const file of files) {
    const bytes = await file.bytes();
    if (sha256(bytes) !== hashes.get(file.from)) return file.path;
    writeThrough(join(half, file.path), bytes);
  }
  return undefined;
}

/** Written down to the disk before the folder gets its name. */
export function writeThrough(path: string, bytes: Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  const file = openSync(path, 'wx');
  try {
    for (let done = 0; done < bytes.length;) done += writeSync(file, bytes, done);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** The files are read-only from now on: an editor asks before it writes. What is named stays; the folder takes its name. */
export function nameIt(half: string, target: string, fixed: readonly string[]): void {
  for (const file of fixed) chmodSync(join(half, file), 0o444);
  renameSync(half, target);
}
