// What the records would say with files that are not written yet: so that nothing is put there which cannot be read.
import { build, readDay, stops } from '../../build.ts';
import { readMachineFolder, type MachineFolder } from '../../disk.ts';
import type { Problem } from '../../problem/problem.ts';
import type { Asset, SourceFile } from '../../source/files.ts';
import { readManual } from '../manual.ts';

export interface WouldBe {
  readonly folder: MachineFolder;
  /** Problems that there are only with the new files. */
  readonly problems: readonly Problem[];
  readonly textOf: (file: string) => string | undefined;
}

/** Reads a machine folder as it would be with these files and pictures; a file that is there already is taken in its new form. */
export function wouldBe(
  path: string,
  today: string,
  files: readonly SourceFile[],
  assets: readonly Asset[] = [],
): WouldBe | undefined {
  const folder = readMachineFolder(path).value;
  if (folder === undefined) return undefined;
  const fresh = new Map(files.map((file) => [file.file, file]));
  const kept = folder.files.filter(({ file }) => !fresh.has(file));
  const all = [...kept, ...files].toSorted((a, b) => (a.file < b.file ? -1 : 1));
  const before = new Set(problemsOf(folder, folder.files, [], today).map(keyOf));
  const problems = problemsOf(folder, all, assets, today).filter((problem) => !before.has(keyOf(problem)));
  return { folder, problems, textOf: (file) => all.find((one) => one.file === file)?.text };
}

function problemsOf(
  folder: MachineFolder,
  files: readonly SourceFile[],
  assets: readonly Asset[],
  today: string,
): readonly Problem[] {
  const day = readDay(today);
  if (!day.ok) throw new Error('asked to compute for what is not a day');
  const { content } = readManual();
  const made = build({
    files,
    assets: [...folder.assets, ...assets],
    shared: folder.shared,
    content,
    before: [],
    today: day.value,
    siteOnly: true,
    workings: false,
  });
  return stops(made.problems);
}

function keyOf({ code, at, message }: Problem): string {
  return [code, at.file, message].join('\n');
}
