// The only place that reads records and content from the disk: a machine folder, a workshop of them, and the content beside this package.
import { closeSync, openSync, readFileSync, readSync, realpathSync, statSync, type Stats } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { entryOf, namesIn, slashed, walk, type Entry } from './disk/walk.ts';
import { notAMachine, notOpened } from './problem/folder-problems.ts';
import type { Outcome } from './problem/problem.ts';
import type { Asset, SourceFile } from './source/files.ts';

export type { Asset, SourceFile };

/** One machine's folder as it stands on the disk. `files` are in a fixed order, whatever order the disk lists them in. */
export interface MachineFolder {
  /** Absolute path of the folder, symbolic links resolved. */
  readonly folder: string;
  readonly name: string;
  readonly files: readonly SourceFile[];
  readonly assets: readonly Asset[];
  /** Files of the workshop above that count for every machine in it; their `file` begins with `../`. */
  readonly shared: readonly SourceFile[];
  /** Everything that was looked at, for telling later whether anything changed. */
  readonly stamps: readonly Stamp[];
  /** Absolute paths of the folder itself and the folders in it that were looked into. */
  readonly folders: readonly string[];
}

/** Path relative to the machine folder, size in bytes, time of the last change in milliseconds. */
export interface Stamp {
  readonly file: string;
  readonly size: number;
  readonly modified: number;
}

/** More is never read of a record: enough for the reader of documents to see that it is over 1 MB of characters, whatever the script. */
const mostBytes = 3_000_003;

/**
 * Reads one machine folder. The value is undefined only when it is not a machine folder at all. With an earlier reading, files
 * whose size and time are the same are taken from it, the very same objects, so that what was made of them can be kept.
 */
export function readMachineFolder(path: string, earlier?: MachineFolder): Outcome<MachineFolder | undefined> {
  const folder = realFolder(path);
  if (folder === undefined || !isFile(join(folder, 'machine.yaml'))) {
    return { value: undefined, problems: [notAMachine(path)] };
  }
  const found = walk(folder);
  const problems = [...found.problems];
  const known = unchangedTexts(earlier);
  const take = (entry: Entry): SourceFile[] => {
    const kept = known.get(stampText(entry));
    if (kept !== undefined) return [kept];
    const read = readText(entry);
    problems.push(...read.problems);
    return read.value === undefined ? [] : [read.value];
  };
  const above = sharedEntries(folder);
  const value: MachineFolder = {
    folder,
    name: basename(folder).normalize('NFC'),
    files: found.records.flatMap(take),
    assets: found.assets,
    shared: above.flatMap(take),
    stamps: [...found.records, ...above, ...found.assets].map(stampOf),
    folders: above.length === 0 ? found.folders : [...found.folders, dirname(folder)],
  };
  return { value, problems };
}

/**
 * An earlier reading with a few records read again, without looking at the rest of the folder. Undefined when one of them is not a
 * record of the earlier reading, or is one no longer: then the folder must be read as a whole.
 */
export function readAgain(earlier: MachineFolder, touched: readonly string[]): MachineFolder | undefined {
  const fresh = new Map<string, { readonly stamp: Stamp; readonly text: SourceFile }>();
  for (const absolute of touched) {
    const entry = entryOf(earlier.folder, absolute);
    const known = earlier.files.some(({ file }) => file === entry?.file);
    const text = entry === undefined || entry.link || !known ? undefined : readText(entry).value;
    if (entry === undefined || text === undefined) return undefined;
    fresh.set(entry.file, { stamp: stampOf(entry), text });
  }
  return {
    ...earlier,
    files: earlier.files.map((file) => fresh.get(file.file)?.text ?? file),
    stamps: earlier.stamps.map((stamp) => fresh.get(stamp.file)?.stamp ?? stamp),
  };
}

/** The texts of an earlier reading, each under its name, size and time. */
function unchangedTexts(earlier: MachineFolder | undefined): ReadonlyMap<string, SourceFile> {
  if (earlier === undefined) return new Map();
  const stamps = new Map(earlier.stamps.map((stamp) => [stamp.file, stampText(stamp)]));
  return new Map([...earlier.files, ...earlier.shared].map((file) => [stamps.get(file.file) ?? '', file]));
}

function stampText(stamp: Stamp): string {
  return [stamp.file, stamp.size, stamp.modified].join('\n');
}
function stampOf({ file, size, modified }: Stamp): Stamp {
  return { file, size, modified };
}

/** Stamps of everything in a machine folder without reading a byte of it. */
export function stampsOf(folder: string): readonly Stamp[] {
  const found = walk(folder);
  return [...found.records, ...sharedEntries(folder), ...found.assets].map(stampOf);
}

/** The machine folders at a path: itself, or the ones inside a workshop, by name. The value is empty when there are none. */
export function findMachines(path: string): Outcome<readonly string[]> {
  const folder = realFolder(path);
  if (folder === undefined) return { value: [], problems: [notAMachine(path)] };
  if (isFile(join(folder, 'machine.yaml'))) return { value: [folder], problems: [] };
  const inside = (namesIn(folder) ?? [])
    // What is only on its way to being a machine folder has a hidden name.
    .filter(
      (each) => each.isDirectory() && !each.name.startsWith('.') && isFile(join(folder, each.name, 'machine.yaml')),
    )
    .map((each) => join(folder, each.name));
  if (inside.length === 0) return { value: [], problems: [notAMachine(path)] };
  return { value: inside.sort(), problems: [] };
}

/** Every machine of a workshop (or the one machine, if the path is a machine), read. */
export function readWorkshop(path: string): Outcome<readonly MachineFolder[]> {
  const machines = findMachines(path);
  const read = machines.value.map((machine) => readMachineFolder(machine));
  return {
    value: read.flatMap((each) => (each.value === undefined ? [] : [each.value])),
    problems: [...machines.problems, ...read.flatMap((each) => each.problems)],
  };
}

/** The content that is the same for every machine: `content/` of this package, each file named from there. */
export function readContentFolder(): readonly SourceFile[] {
  const root = packageFolder();
  return walkContent(join(root, 'content')).map((absolute) => ({
    file: slashed(relative(root, absolute)),
    text: readFileSync(absolute, 'utf8'),
  }));
}

/** The folder of this package, found by walking up: compiled code lies elsewhere than the sources. */
export function packageFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!isFile(join(folder, 'package.json')) || !isFile(join(folder, 'content/pages/formats.md'))) {
    if (folder === dirname(folder)) throw new Error('the installation lacks its content folder');
    folder = dirname(folder);
  }
  return folder;
}

function walkContent(folder: string): readonly string[] {
  return (namesIn(folder) ?? []).flatMap((each) => {
    const absolute = join(folder, each.name);
    if (each.isDirectory()) return walkContent(absolute);
    return /\.(md|ya?ml)$/.test(each.name) ? [absolute] : [];
  });
}

/** Instruments, suppliers and stock kept in the workshop count for every machine in it. */
function sharedEntries(folder: string): readonly Entry[] {
  const above = dirname(folder);
  if (isFile(join(above, 'machine.yaml'))) return [];
  return ['instruments.yaml', 'workshop.yaml'].flatMap((name) => {
    const entry = entryOf(above, join(above, name));
    return entry === undefined || entry.link ? [] : [{ ...entry, file: `../${entry.file}` }];
  });
}

function readText(entry: Entry): Outcome<SourceFile | undefined> {
  try {
    return { value: { file: entry.file, text: textOf(entry) }, problems: [] };
  } catch {
    return { value: undefined, problems: [notOpened(entry.file)] };
  }
}

/** The text of a file; what is not UTF-8 comes as replacement characters, which the reader of documents points at. */
function textOf(entry: Entry): string {
  if (entry.size <= mostBytes) return readFileSync(entry.absolute, 'utf8');
  const file = openSync(entry.absolute, 'r');
  try {
    const buffer = Buffer.alloc(mostBytes);
    return buffer.toString('utf8', 0, readSync(file, buffer, 0, mostBytes, 0));
  } finally {
    closeSync(file);
  }
}

function realFolder(path: string): string | undefined {
  const stat = statOf(resolve(path));
  return stat?.isDirectory() === true ? realpathSync(resolve(path)) : undefined;
}
/** Undefined as well where the way to it leads through a file or a closed folder. */
function statOf(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}
function isFile(path: string): boolean {
  return statOf(path)?.isFile() === true;
}
