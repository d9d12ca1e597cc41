// Has anything changed since the last build? Answered from sizes and times; a file is read only when those differ.
import { readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { hashOf } from './hash.ts';
import type { InputMark, LastBuild } from './manifest.ts';

export interface Question {
  readonly program: string;
  readonly options: string;
  /** The machine folder, and what is in it now: asked for once, and only when program and options are those of the last build. */
  readonly folder: string;
  readonly stamps: readonly { readonly file: string; readonly size: number; readonly modified: number }[];
}

/** True when a build would give the very folder that is there, every file of it untouched. */
export function isUnchanged(last: LastBuild, now: Question): boolean {
  const { manifest } = last;
  if (manifest.program !== now.program || manifest.options !== now.options) return false;
  const { stamps } = now;
  if (manifest.inputs.length !== stamps.length) return false;
  const known = new Map(manifest.inputs.map((mark) => [mark.file, mark]));
  const sameInputs = stamps.every((stamp) => sameInput(known.get(stamp.file), stamp, now.folder));
  return sameInputs && Object.keys(manifest.outputs).every((file) => isUntouched(last, file));
}

/** True when a file of the last build is still there and has not been written to since. */
export function isUntouched(last: LastBuild, file: string): boolean {
  const stat = statSync(`${last.folder}/${file}`, { throwIfNoEntry: false });
  return stat?.isFile() === true && stat.mtimeMs <= last.written;
}

function sameInput(mark: InputMark | undefined, stamp: Question['stamps'][number], folder: string): boolean {
  if (mark === undefined || mark.size !== stamp.size) return false;
  if (mark.modified === stamp.modified) return true;
  // A copied or checked-out folder has new times and the same text.
  return mark.hash !== '' && hashOfFile(join(folder, stamp.file)) === mark.hash;
}

/** Undefined where the file is gone by now, or the disk spells an accent in the other of its two ways: then it counts as changed. */
function hashOfFile(path: string): string | undefined {
  try {
    return hashOf(readFileSync(path));
  } catch {
    return undefined;
  }
}
