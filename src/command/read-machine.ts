// One machine read and computed, with everything that was wrong on the way.
import { build, readDay, type Binder } from '../build.ts';
import { readAgain, readMachineFolder, type MachineFolder } from '../disk.ts';
import { fingerprintOf } from './fingerprint-of.ts';
import { readManual } from './manual.ts';
import type { Problem } from '../problem/problem.ts';
import { withPicturedDays } from './pictured-days.ts';
import type { Options } from './program.ts';

export interface ReadMachine {
  readonly folder: MachineFolder;
  /** Absent when the machine itself cannot be read. */
  readonly binder: Binder | undefined;
  readonly problems: readonly Problem[];
  /** Text of a file by its name in problems. */
  readonly textOf: (file: string) => string | undefined;
}

/** An earlier reading, and the files that were written to since if nothing else happened in the folder. */
export interface Earlier {
  readonly reading: ReadMachine;
  readonly touched: readonly string[] | undefined;
}

/**
 * Reads a machine folder and computes its binder for a day. `path` must be a machine folder. With an earlier reading, what has
 * not changed is not read again; a folder that is no longer a machine's keeps the earlier texts.
 */
export function readMachine(path: string, today: string, options: Options, earlier?: Earlier): ReadMachine {
  const again = earlier?.touched && readAgain(earlier.reading.folder, earlier.touched);
  const read = again === undefined ? readMachineFolder(path, earlier?.reading.folder) : { value: again, problems: [] };
  const folder = read.value ?? earlier?.reading.folder;
  if (folder === undefined) throw new Error('asked to read what is not a machine folder');
  const day = readDay(today);
  if (!day.ok) throw new Error('asked to compute for what is not a day');
  const manual = readManual();
  const made = build({
    files: withPicturedDays(folder.files, folder.assets),
    assets: folder.assets,
    shared: folder.shared,
    content: manual.content,
    before: read.problems,
    today: day.value,
    siteOnly: options.siteOnly === true,
    workings: options.workings === true,
    ...(options.paper === undefined ? {} : { paper: options.paper }),
    fingerprint: fingerprintOf([...folder.shared, ...folder.files]),
    ...(options.copy === undefined ? {} : { copy: options.copy }),
    ...(options.bothSides === true ? { sides: 'both' as const } : {}),
  });
  const texts = new Map([...folder.shared, ...folder.files].map((each) => [each.file, each.text]));
  return {
    folder,
    binder: made.value,
    problems: made.problems,
    textOf: (file) => texts.get(file) ?? manual.textOf(file),
  };
}
