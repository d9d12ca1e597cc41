// New files for a machine folder: each whole or not at all, none in the place of one that is there, and all of them or none.
import { closeSync, fsyncSync, linkSync, mkdirSync, openSync, rmSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Path in the machine folder, and what is in it; a function gives it when its turn comes, so that not all pictures are in memory at once. */
export interface NewFile {
  readonly file: string;
  readonly bytes: string | Uint8Array | (() => Uint8Array);
}

/**
 * Writes the files. Throws what the disk says when writing breaks off; then none of them is there. A process that is killed in between
 * leaves whole files only, and what it was writing under a name that no reader looks at.
 */
export function writeNew(folder: string, files: readonly NewFile[]): void {
  const halves = files.map(({ file }) =>
    join(folder, dirname(file), `.${file.slice(file.lastIndexOf('/') + 1)}.${String(process.pid)}.half`),
  );
  const placed: string[] = [];
  try {
    for (const [index, { bytes }] of files.entries()) writeThrough(halves[index] ?? '', bytes);
    for (const [index, { file }] of files.entries()) {
      // A link is refused where the name is taken; renaming would put the new file in the place of the old one.
      linkSync(halves[index] ?? '', join(folder, file));
      placed.push(join(folder, file));
    }
  } catch (cause) {
    for (const path of placed) rmSync(path, { force: true });
    throw cause;
  } finally {
    for (const half of halves) rmSync(half, { force: true });
  }
}

function writeThrough(path: string, bytes: NewFile['bytes']): void {
  mkdirSync(dirname(path), { recursive: true });
  const file = openSync(path, 'w');
  try {
    const all = typeof bytes === 'string' ? Buffer.from(bytes) : typeof bytes === 'function' ? bytes() : bytes;
    for (let done = 0; done < all.length;) done += writeSync(file, all, done);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}
