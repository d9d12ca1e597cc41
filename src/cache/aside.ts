// An output folder is built aside and swapped in whole: whoever looks, or whatever kills us, sees the old one or the new one.
import {
  chmodSync,
  copyFileSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  rmdirSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { hashOf } from './hash.ts';
import { manifestFile, writeManifest, type LastBuild, type Manifest } from './manifest.ts';
import { isUntouched } from './unchanged.ts';
import { byFolder, folderOf, giveBack, isWhole, moveFolders } from './whole-folders.ts';

export interface Aside {
  /** Folder that is written to, on the same disk as the output folder. */
  readonly folder: string;
  readonly out: string;
  readonly last: LastBuild | undefined;
  /** Files so far, with the hash of their text. */
  readonly outputs: Map<string, string>;
  /** How many files were written anew; the others were taken over. */
  readonly written: string[];
  /** Pages that came out as they were: taken over at the swap. */
  readonly same: Set<string>;
  readonly folders: Set<string>;
}

/** Begins a build aside, beside a folder that was claimed (see claim.ts). The process number in the name tells later runs whether this one still lives. */
export function openAside(out: string, last: LastBuild | undefined): Aside {
  const folder = mkdtempSync(join(dirname(out), asidePrefix(out) + String(process.pid) + '-'));
  // mkdtemp makes a folder that only its owner may enter, and the swap would keep it so.
  chmodSync(folder, 0o755);
  writeFileSync(join(folder, manifestFile), '{"unfinished":true}');
  return { folder, out, last, outputs: new Map(), written: [], same: new Set(), folders: new Set() };
}

/** What the names of folders aside begin with; see sweep.ts. */
export function asidePrefix(out: string): string {
  return `.${basename(out)}-`;
}

/** Takes a file over from the last build by a hard link (a copy where links cannot be); false when it is gone or was touched. */
export function takeOver(aside: Aside, file: string): boolean {
  if (aside.outputs.has(file)) return true;
  const { last } = aside;
  if (last === undefined || !isUntouched(last, file)) return false;
  linkOrCopy(`${last.folder}/${file}`, pathFor(aside, file));
  aside.outputs.set(file, last.manifest.outputs[file] ?? '');
  return true;
}

/** Lends a file of a build to a folder of scratch, where it is read and not kept; false when it is gone or was touched. */
export function borrow(last: LastBuild | undefined, file: string, into: string): boolean {
  if (last === undefined || !isUntouched(last, file)) return false;
  const path = join(into, file);
  mkdirSync(dirname(path), { recursive: true });
  linkOrCopy(join(last.folder, file), path);
  return true;
}

/** Puts a text in place; equal to the last build's, it is taken over unwritten, but not before the swap: until then it is not there to be read. */
export function putText(aside: Aside, file: string, text: string): void {
  const hash = hashOf(text);
  const { last } = aside;
  if (last?.manifest.outputs[file] === hash && (aside.same.has(file) || isUntouched(last, file))) {
    aside.same.add(file);
    aside.outputs.set(file, hash);
    return;
  }
  writeFileSync(pathFor(aside, file), text);
  aside.outputs.set(file, hash);
  aside.written.push(file);
}

/** Puts a copy of a file of the package in place. */
export function putCopy(aside: Aside, file: string, from: string): void {
  const bytes = readFileSync(from);
  const hash = hashOf(bytes);
  if (aside.last?.manifest.outputs[file] === hash && takeOver(aside, file)) return;
  writeFileSync(pathFor(aside, file), bytes);
  aside.outputs.set(file, hash);
  aside.written.push(file);
}

/** Path to write a file to whose bytes come piece by piece; its folder is made. Note it with `noteFile` when it is whole. */
export function pathFor(aside: Aside, file: string): string {
  const below = folderOf(file);
  if (!aside.folders.has(below)) mkdirSync(join(aside.folder, below), { recursive: true });
  aside.folders.add(below);
  aside.same.delete(file);
  // Names of our own files need no tidying, and there are thousands.
  return `${aside.folder}/${file}`;
}

/** Notes a file that somebody else wrote below the folder. */
export function noteFile(aside: Aside, file: string): void {
  aside.outputs.set(file, '');
  aside.written.push(file);
}

/** Writes the manifest and swaps the folder in. From the first move to the last the old folder stands beside it, and sweep.ts restores it. */
export function swapIn(aside: Aside, manifest: Manifest): void {
  const moved = takeSame(aside);
  writeManifest(aside.folder, manifest);
  const old = `${aside.folder}-old`;
  const had = statSync(aside.out, { throwIfNoEntry: false }) !== undefined;
  if (had) renameSync(aside.out, old);
  try {
    moveFolders(moved, old, aside.folder);
    renameSync(aside.folder, aside.out);
  } catch (cause) {
    if (had) restore(old, aside);
    throw cause;
  }
  if (had) removeOld(old);
}

/** Takes over the pages that came out as they were, each by a link; gives the folders of which there are no others, to be moved whole. */
function takeSame(aside: Aside): readonly string[] {
  const { last, same, folder } = aside;
  if (last === undefined) return [];
  const moved: string[] = [];
  for (const [below, files] of byFolder([...same])) {
    if (isWhole(below, files, last.folder, folder)) moved.push(below);
    else for (const file of files) linkOrCopy(`${last.folder}/${file}`, pathFor(aside, file));
  }
  return moved;
}

/** The old folder is made whole and put back, as if nothing had been begun. */
function restore(old: string, { folder, out }: Aside): void {
  giveBack(old, folder);
  renameSync(old, out);
}

/** A folder that we made holds files and folders: to ask of each what it is would cost as much again. */
function removeOld(folder: string): void {
  try {
    removeWhole(folder);
  } catch {
    rmSync(folder, { recursive: true, force: true });
  }
}

function removeWhole(folder: string): void {
  for (const inside of readdirSync(folder, { withFileTypes: true })) {
    const path = `${folder}/${inside.name}`;
    if (inside.isDirectory()) removeWhole(path);
    else unlinkSync(path);
  }
  rmdirSync(folder);
}

/** Gives a build up: the output folder stays as it was. */
export function dropAside(aside: Aside): void {
  rmSync(aside.folder, { recursive: true, force: true });
}

function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to);
  } catch {
    copyFileSync(from, to);
  }
}
