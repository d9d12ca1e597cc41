// A new folder comes into being whole or not at all: it is written beside its place and takes its name at the end.
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  renameSync,
  rmSync,
  writeSync,
  chmodSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** True when something of this name is there already, whatever it is. */
export function isTaken(folder: string): boolean {
  return existsSync(folder);
}

/**
 * Writes the files into a folder beside `folder`, lets `look` see it there, and gives it its name when `look` agrees. Nothing is left
 * behind when it does not, or when writing breaks off.
 */
export async function putInPlace(
  folder: string,
  files: Readonly<Record<string, string>>,
  look: (half: string) => Promise<boolean>,
): Promise<boolean> {
  mkdirSync(dirname(folder), { recursive: true });
  const half = mkdtempSync(join(dirname(folder), `.${basename(folder)}-`));
  try {
    // A folder made for the moment is shut to others; one that stays is not.
    chmodSync(half, 0o755);
    for (const [file, text] of Object.entries(files)) writeThrough(join(half, file), text);
    if (!(await look(half))) return false;
    if (isTaken(folder)) return false;
    renameSync(half, folder);
    return true;
  } finally {
    rmSync(half, { recursive: true, force: true });
  }
}

/** Written down to the disk before it gets its name: after a power cut it is whole or not there. */
function writeThrough(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true });
  const file = openSync(path, 'wx');
  try {
    writeSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
