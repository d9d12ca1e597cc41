// The records of the machine that something is taken for.
import { readMachineFolder } from '../../disk.ts';
import type { Job, Machine } from '../../records/model.ts';
import { readRecords } from '../../records/read.ts';
import type { Asset, SourceFile } from '../../source/files.ts';

export interface RecordsIn {
  readonly machine: Machine;
  readonly jobs: readonly Job[];
  readonly files: readonly SourceFile[];
  readonly assets: readonly Asset[];
}

/** What stands in a machine folder; undefined when the machine itself cannot be read. */
export function recordsIn(path: string): RecordsIn | undefined {
  const folder = readMachineFolder(path).value;
  if (folder === undefined) return undefined;
  const records = readRecords(folder.files, folder.assets, folder.shared).value;
  return records && { machine: records.machine, jobs: records.jobs, files: folder.files, assets: folder.assets };
}
