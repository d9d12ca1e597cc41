// Readings kept for as long as their text is: while a binder is served, one record changes and a thousand do not.
import type { SourceFile } from '../source/files.ts';
import { dimensionsOf } from './dimensions-of.ts';
import type { Job, MakerData } from './model.ts';
import type { RecordKind } from './kinds/record-kind.ts';
import { keptWith } from './kept-with.ts';
import { readFile, type FileReading } from './read-file.ts';

export interface MakerReading {
  readonly readings: readonly FileReading<MakerData>[];
  readonly maker: MakerData;
  readonly dimensionOf: ReturnType<typeof dimensionsOf>;
}

let last: { readonly files: readonly SourceFile[]; readonly reading: MakerReading } | undefined;

/** The maker's data of these very files as read before, or read now. A text that is the same object is the same text. */
export function keptMaker(files: readonly SourceFile[], read: () => Omit<MakerReading, 'dimensionOf'>): MakerReading {
  const known = last;
  if (known !== undefined && isSame(known.files, files)) return known.reading;
  const made = read();
  const reading = { ...made, dimensionOf: dimensionsOf(made.maker) };
  last = { files, reading };
  return reading;
}

function isSame(a: readonly SourceFile[], b: readonly SourceFile[]): boolean {
  return a.length === b.length && a.every((file, index) => file === b[index]);
}

/** Reads files as one kind, each text once. */
export function keptReader<T>(kind: RecordKind<T>): (source: SourceFile) => FileReading<T> {
  const reader = keptWith((source: SourceFile) => readFile(source, kind));
  // One argument, whatever else a walk over a list would hand on.
  return (source) => reader(source);
}

type Sense = MakerReading['dimensionOf'];
const jobs = new WeakMap<SourceFile, { readonly sense: Sense; readonly reading: FileReading<Job> }>();

/** The job that was read from this very text under these very names of the maker's, or one read now. */
export function keptJob(source: SourceFile, sense: Sense, read: () => FileReading<Job>): FileReading<Job> {
  const known = jobs.get(source);
  if (known?.sense === sense) return known.reading;
  const reading = read();
  jobs.set(source, { sense, reading });
  return reading;
}
