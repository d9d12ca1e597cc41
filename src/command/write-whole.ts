// A record written whole or not at all: beside its place, down to the disk, then under its name; never over what somebody else wrote meanwhile.
import {
  chmodSync,
  closeSync,
  fsyncSync,
  linkSync,
  openSync,
  readFileSync,
  readdirSync,
  renameSync,
  statSync,
  unlinkSync,
  writeSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** What is asked of the disk; tests let each of it break off. */
export interface WritingDisk {
  readonly read: (path: string) => string | undefined;
  readonly create: (path: string, mode: number | undefined) => number;
  readonly write: (file: number, text: string) => void;
  readonly settle: (file: number) => void;
  readonly close: (file: number) => void;
  /** Puts a file in another's place. */
  readonly replace: (from: string, to: string) => void;
  /** Gives a file a name that nothing has; throws EEXIST where something has it. */
  readonly name: (from: string, to: string) => void;
  readonly remove: (path: string) => void;
}

/** `changed`: what stands there is not what the caller read; nothing was written. */
export type Wrote = 'written' | 'changed';

/**
 * Writes `text` to `path`, where `was` stands, or nothing where `was` is undefined. After a fault or a kill at any moment the file holds
 * the old text or the new, never a part of one.
 */
export function writeWhole(path: string, text: string, was: string | undefined, disk: WritingDisk = realDisk): Wrote {
  if (disk.read(path) !== was) return 'changed';
  const half = join(dirname(path), `.${basename(path)}.${String(process.pid)}.half`);
  try {
    writeHalf(half, text, path, disk);
    // Between reading and here an editor may have saved: looked at once more, as late as can be.
    if (disk.read(path) !== was) return 'changed';
    if (was === undefined) disk.name(half, path);
    else disk.replace(half, path);
    return 'written';
  } catch (cause) {
    if (was === undefined && hasCode(cause, 'EEXIST')) return 'changed';
    throw cause;
  } finally {
    disk.remove(half);
  }
}

function writeHalf(half: string, text: string, path: string, disk: WritingDisk): void {
  // One that a killed run left under this very name is nobody's.
  disk.remove(half);
  const file = disk.create(half, modeOf(path));
  try {
    disk.write(file, text);
    disk.settle(file);
  } finally {
    disk.close(file);
  }
}

/** Files that killed runs left beside records; those of programs that still run are left alone. */
export function sweepHalves(folder: string): void {
  for (const name of namesIn(folder)) {
    const pid = /^\..+\.(\d+)\.half$/u.exec(name)?.[1];
    if (pid !== undefined && !isRunning(Number(pid))) realDisk.remove(join(folder, name));
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (cause) {
    return hasCode(cause, 'EPERM');
  }
}

function modeOf(path: string): number | undefined {
  return statSync(path, { throwIfNoEntry: false })?.mode;
}

function hasCode(cause: unknown, code: string): boolean {
  return cause instanceof Error && 'code' in cause && cause.code === code;
}

/** The disk itself. */
export const realDisk: WritingDisk = {
  read: (path) => {
    try {
      return readFileSync(path, 'utf8');
    } catch (cause) {
      if (hasCode(cause, 'ENOENT')) return undefined;
      throw cause;
    }
  },
  create: (path, mode) => {
    const file = openSync(path, 'wx');
    if (mode !== undefined) chmodSync(path, mode & 0o777);
    return file;
  },
  write: (file, text) => {
    const bytes = Buffer.from(text, 'utf8');
    for (let done = 0; done < bytes.length;) done += writeSync(file, bytes, done);
  },
  settle: fsyncSync,
  close: closeSync,
  replace: renameSync,
  name: linkSync,
  remove: (path) => {
    try {
      unlinkSync(path);
    } catch (cause) {
      if (!hasCode(cause, 'ENOENT')) throw cause;
    }
  },
};
