// Walking through a machine folder: which files are there, without opening one.
import { lstatSync, readdirSync, type Dirent } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { folderTooDeep, linkNotFollowed, notAFile, notOpened, strayFile } from '../problem/folder-problems.ts';
import type { Problem } from '../problem/problem.ts';
import type { Asset } from '../source/files.ts';
import { judgeNames } from '../source/judge-names.ts';
import { isMachineFolder, isRecord, isStray } from '../source/machine-files.ts';

const deepest = 8;

export interface Found {
  readonly records: readonly Entry[];
  readonly assets: readonly Asset[];
  readonly problems: readonly Problem[];
  readonly folders: readonly string[];
}
export interface Entry extends Asset {
  readonly link: boolean;
}

/** All files that can matter, sorted. A linked record is a problem; a linked photo is marked, for the record that names it to say so. */
export function walk(folder: string): Found {
  const seen = lookInto(folder);
  const names = judgeNames(seen.files.map(({ onDisk }) => onDisk));
  const found = seen.files.filter(({ onDisk }) => !names.copies.has(onDisk)).map(sortOut);
  return {
    records: found.flatMap(({ record }) => record ?? []),
    assets: found.flatMap(({ asset }) => asset ?? []),
    problems: [...seen.problems, ...found.flatMap(({ problem }) => problem ?? []), ...names.problems].toSorted(byPlace),
    folders: seen.folders,
  };
}

/** A file by its names: where it is, and below the machine folder as the disk and as records write it (one form of letters). */
interface Named {
  readonly absolute: string;
  readonly onDisk: string;
  readonly file: string;
}

interface Seen {
  readonly files: readonly Named[];
  readonly folders: readonly string[];
  readonly problems: readonly Problem[];
}

/** Every file in the folders that are looked into; those that begin with a dot are somebody else’s. */
function lookInto(folder: string): Seen {
  const files: Named[] = [];
  const folders: string[] = [];
  const problems: Problem[] = [];
  const visit = (at: Named, depth: number): void => {
    const inside = namesIn(at.absolute);
    if (inside === undefined) {
      problems.push(notOpened(at.file));
      return;
    }
    folders.push(at.absolute);
    // Names are put together from the folder's: there are thousands, and to take each apart again is dear.
    const before = { absolute: at.absolute + sep, onDisk: at.onDisk === '' ? '' : `${at.onDisk}/` };
    for (const each of inside) {
      if (each.name.startsWith('.') || each.name === 'node_modules') continue;
      const onDisk = before.onDisk + each.name;
      const one: Named = { absolute: before.absolute + each.name, onDisk, file: onDisk.normalize('NFC') };
      if (!each.isDirectory()) files.push(one);
      else if (isMachineFolder(one.file) && depth >= deepest) problems.push(folderTooDeep(one.file));
      else if (isMachineFolder(one.file)) visit(one, depth + 1);
    }
  };
  visit({ absolute: join(folder), onDisk: '', file: '' }, 0);
  return { files, folders, problems };
}

/** What a file is: told by its place and its name. */
function sortOut({ absolute, file }: Named): { record?: Entry; asset?: Entry; problem?: Problem } {
  if (!isMachineFolder(file) && !isRecord(file) && !isStray(file)) return {};
  const entry = entryNamed(file, absolute);
  if (entry === undefined) return isRecord(file) ? { problem: notAFile(file) } : {};
  if (/^(photos|documents)\//.test(file)) return { asset: entry };
  if (entry.link) return { problem: linkNotFollowed(file) };
  if (isRecord(file)) return { record: entry };
  return isStray(file) ? { problem: strayFile(file) } : {};
}

function byPlace(a: Problem, b: Problem): number {
  return a.at.file < b.at.file ? -1 : a.at.file > b.at.file ? 1 : 0;
}

/** What is in a folder, sorted; undefined when it may not be looked into. */
export function namesIn(folder: string): readonly Dirent[] | undefined {
  try {
    return readdirSync(folder, { withFileTypes: true }).sort(byName);
  } catch {
    return undefined;
  }
}

/** A file as it stands; links are told apart so that nobody follows them. */
export function entryOf(folder: string, absolute: string): Entry | undefined {
  return entryNamed(named(folder, absolute), absolute);
}

function entryNamed(file: string, absolute: string): Entry | undefined {
  const stat = lstatSync(absolute, { throwIfNoEntry: false });
  if (stat === undefined) return undefined;
  const link = stat.isSymbolicLink();
  if (!stat.isFile() && !link) return undefined;
  return { file, absolute, size: stat.size, modified: stat.mtimeMs, link };
}

/** One name for one file on every system: forward slashes, composed letters. */
function named(folder: string, absolute: string): string {
  return slashed(relative(folder, absolute)).normalize('NFC');
}
export function slashed(path: string): string {
  return sep === '/' ? path : path.split(sep).join('/');
}
function byName(a: { readonly name: string }, b: { readonly name: string }): number {
  return a.name < b.name ? -1 : 1;
}
