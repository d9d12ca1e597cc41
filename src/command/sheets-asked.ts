// Which sheets a word means: a sheet, a job, a part of a job's name that only one open job has, a kind of job sheet, or all.
import type { Binder, Sheet } from '../build.ts';
import { keepingJob } from './sheet-form.ts';

/**
 * A sheet by its name; each once by `all`; by the name of a job its sheets, and of the machine those its record keeps; by the name of a
 * kind of job sheet (`teardown`) that of every planned job. None when the word means nothing, or more than one job.
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
  const [open, ...others] = book.plans.filter(({ job }) => job.id.includes(name));
  return open === undefined || others.length > 0 ? [] : ofJob(open.job.id);
}
