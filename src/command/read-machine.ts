// One machine read and computed, with everything that was wrong on the way.
import { build, readContent, readDay, type Binder } from '../build.ts';
import { readContentFolder, readMachineFolder, type MachineFolder } from '../disk.ts';
import type { Problem } from '../problem/problem.ts';
import type { Options } from './program.ts';

export interface ReadMachine {
  readonly folder: MachineFolder;
  /** Absent when the machine itself cannot be read. */
  readonly binder: Binder | undefined;
  readonly problems: readonly Problem[];
  /** Text of a file by its name in problems. */
  readonly textOf: (file: string) => string | undefined;
}

/** Reads a machine folder and computes its binder for a day. `folder` must be a machine folder. */
export function readMachine(path: string, today: string, options: Options): ReadMachine {
  const read = readMachineFolder(path);
  if (read.value === undefined) throw new Error('asked to read what is not a machine folder');
  const contentFiles = readContentFolder();
  const folder = read.value;
  const day = readDay(today);
  if (!day.ok) throw new Error('asked to compute for what is not a day');
  const made = build({
    files: folder.files,
    assets: folder.assets,
    shared: folder.shared,
    content: readContent(contentFiles),
    today: day.value,
    ...(options.paper === undefined ? {} : { paper: options.paper }),
  });
  const texts = new Map([...contentFiles, ...folder.shared, ...folder.files].map((each) => [each.file, each.text]));
  return {
    folder,
    binder: made.value,
    problems: [...read.problems, ...made.problems],
    textOf: (file) => texts.get(file),
  };
}
