// One job file as a job: its id is its name, its body is kept as written.
import type { SourceFile } from '../source/files.ts';
import { jobKind } from './kinds/job.ts';
import type { Job } from './model.ts';
import { readFile, type FileReading } from './read-file.ts';
import { cleanText } from '../source/clean-text.ts';
import { signedPrint, versionOf } from './signed-print.ts';
import type { Desk } from './shapes/desk.ts';

/** Reads a job. A job with any problem is not given: half a record would misreport what was done. */
export function readJob(source: SourceFile, dimensionOf: Desk['dimensionOf']): FileReading<Job> {
  const { file, value, document, problems, kept } = readFile(source, jobKind, dimensionOf);
  // The tree is let go here: kept until all files are read, thousands of them would wear the collector out.
  const told = { file, document: undefined, problems, kept };
  if (value === undefined || document === undefined || problems.length > 0) return { ...told, value: undefined };
  const print = value.signed === undefined ? {} : { print: signedPrint(source.text) };
  const taken = source.pictured === undefined ? {} : { dayFrom: 'photographs' as const };
  const job = {
    id: recordId(file),
    file,
    ...value,
    body: document.body,
    bodyLine: document.bodyLine,
    version: versionOf(cleanText(source.text)) + (source.pictured ?? ''),
    ...print,
    ...taken,
  };
  return { ...told, value: job };
}

/** The permanent id of a record: its file name without the ending, one form for letters that can be written in two. */
export function recordId(file: string): string {
  const name = file.slice(file.lastIndexOf('/') + 1);
  return name.replace(/\.md$/u, '').normalize('NFC');
}

/** Jobs in the order in which they happened; of one day by file name. */
export function byDate(a: Job, b: Job): number {
  return compare(a.date.from, b.date.from) || compare(a.id, b.id);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
