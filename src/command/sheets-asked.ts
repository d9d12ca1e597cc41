// Which sheets a word means: a sheet, a job, what only one open job is named by, a kind of job sheet, or all.
import type { Binder, Sheet } from '../build.ts';
import type { Job } from '../records/model.ts';
import { jobsNamed } from './jobs-named.ts';
import { keepingJob } from './sheet-form.ts';

/**
 * A sheet by its name; each once by `all`; by the name of a job its sheets, and of the machine those its record keeps; by the name of a
 * kind of job sheet (`teardown`) that of every planned job; by the procedure or the title of an open job as by its name. None when the word
 * means nothing, or more than one job.
 */
export function sheetsAsked(wanted: string, { book, sheets }: Pick<Binder, 'book' | 'sheets'>): readonly Sheet[] {
  if (wanted === 'all') return sheets.filter((sheet) => sheet.byName !== true);
  const name = wanted.replace(/^.*jobs\//u, '').replace(/\.(md|pdf)$/u, '');
  const exact = sheets.filter((sheet) => sheet.id === name);
  if (exact.length > 0) return exact;
  const ofJob = (job: string): readonly Sheet[] => sheets.filter((sheet) => keepingJob(sheet, book)?.id === job);
  if (book.jobs.has(name)) return ofJob(name);
  const begun = name + '-';
  const ofKind = sheets.filter((sheet) => sheet.id.startsWith(begun) && book.jobs.has(sheet.id.slice(begun.length)));
  if (ofKind.length > 0) return ofKind;
  const [open, ...others] = jobsAsked(name, book);
  return open === undefined || others.length > 0 ? [] : ofJob(open.id);
}

/** The open jobs that a word may mean. */
export function jobsAsked(wanted: string, book: Binder['book']): readonly Job[] {
  return jobsNamed(
    wanted,
    book.plans.map(({ job }) => job),
  );
}
