// Reads a machine folder of the repository for the cross-checks; every problem is handed on as one line of text.
import { join } from 'node:path';
import { packageFolder, readContentFolder, readMachineFolder } from '../../src/disk.ts';
import type { Problem } from '../../src/problem/problem.ts';
import { withOwnContent } from '../../src/records/own/own-content.ts';
import { readContent } from '../../src/records/read-content.ts';
import { readRecords } from '../../src/records/read.ts';
import type { Content } from '../../src/records/content-model.ts';
import type { Records } from '../../src/records/model.ts';

export const root = packageFolder();

const said = (problem: Problem): string =>
  [problem.code, problem.at.file, ...problem.at.path, problem.message].join(' ');

const readOnce = readContent(readContentFolder());

export const content: Content = readOnce.value;
export const contentProblems: readonly string[] = readOnce.problems.map(said);

/** The records of a folder named from the root, the content with what the machine adds to it, and what was wrong with both. */
export function readFolder(folder: string): {
  readonly records: Records;
  readonly content: Content;
  readonly problems: readonly string[];
} {
  const read = readMachineFolder(join(root, folder));
  if (read.value === undefined) throw new Error(folder + ' is not a machine folder');
  const { files, assets, shared } = read.value;
  const records = readRecords(files, assets, shared);
  if (records.value === undefined) throw new Error(records.problems.map(said).join('\n'));
  const own = withOwnContent(content, files);
  const problems = [...read.problems, ...records.problems, ...own.problems].map(said);
  return { records: records.value, content: own.value, problems };
}

export const demo = readFolder('demo-bike');

/** A named thing that must be there, or the test says which one is not. */
export function found<T>(things: readonly T[], is: (thing: T) => boolean, name: string): T {
  const thing = things.find(is);
  if (thing === undefined) throw new Error('there is no ' + name);
  return thing;
}

/** A setting of the demo's book, in the SI unit of its dimension. */
export function settingInSi(id: string): number {
  const { value } = found(demo.records.maker.settings, (one) => one.id === id, id);
  if (value.kind !== 'read') throw new Error(id + ' is not a figure');
  return value.written.quantity;
}
