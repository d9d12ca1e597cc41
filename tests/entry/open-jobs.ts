// Open jobs of the demo and of every fixture machine, read with their sheets: what is asked and where it goes.
import { build } from '../../src/build.ts';
import type { Binder } from '../../src/build.ts';
import { readContentFolder, readMachineFolder } from '../../src/disk.ts';
import { sheetsOfJob } from '../../src/entry/sheets-of-job.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { readContent } from '../../src/records/read-content.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import type { SourceFile } from '../../src/source/files.ts';

const read = readDay('2026-11-28');
if (!read.ok) throw new Error('no day');
export const today = read.value;
const content = readContent(readContentFolder());

export interface OpenJob {
  readonly machine: string;
  readonly book: Binder['book'];
  readonly job: Binder['book']['records']['jobs'][number];
  readonly sheet: readonly Sheet[];
  readonly record: SourceFile;
}

export const machines = [
  'demo-bike',
  'tests/fixtures/tern-350',
  'tests/fixtures/finch-125',
  'tests/fixtures/from-the-manual',
];

/** Files of a machine by name; undefined where the folder does not exist. */
export function filesOf(machine: string): readonly SourceFile[] {
  return readMachineFolder(machine).value?.files ?? [];
}

/** Every open job of these files. */
export function openJobs(machine: string, files: readonly SourceFile[] = filesOf(machine)): readonly OpenJob[] {
  const disk = readMachineFolder(machine).value;
  const made = build({
    files,
    assets: disk?.assets ?? [],
    shared: disk?.shared ?? [],
    content,
    before: [],
    today,
  }).value;
  if (made === undefined) throw new Error(`${machine} cannot be read`);
  return made.book.plans.flatMap(({ job }) => {
    const record = files.find((one) => one.file === job.file);
    return record === undefined
      ? []
      : [{ machine, book: made.book, job, sheet: sheetsOfJob(made.sheets, job.id), record }];
  });
}

/** The same machine with one record in another text. */
export function withRecord(machine: string, record: SourceFile): readonly OpenJob[] {
  return openJobs(
    machine,
    filesOf(machine).map((one) => (one.file === record.file ? record : one)),
  );
}
