// A sheet as a form: its blanks as fields, and what a filled form must carry to find its way back into the record.
import type { Binder, Sheet } from '../build.ts';
import { hashOf, hashOfData } from '../cache/hash.ts';
import type { Blank } from '../entry/blank.ts';
import { blanksOfAll } from '../entry/blanks-of.ts';
import { withGiven } from '../entry/given-in-record.ts';
import type { Form, FormField } from '../pdf/form.ts';
import type { Job } from '../records/model.ts';

/** What travels with every set of answers, from a form or from a telephone. */
export interface Carried {
  /** Version of what is carried; a higher one was made by a newer program. */
  readonly form: string;
  readonly machine: string;
  readonly frame: string;
  readonly job: string;
  /** Ids of the sheets that were asked, parted by spaces. */
  readonly sheets: string;
  /** Print of the job record's text. */
  readonly record: string;
  /** Print of what the sheets asked. */
  readonly asked: string;
}

export const carriedVersion = '1';

/** Sheets of a job, with all that they ask, and what its record says there already. */
export interface Asking {
  readonly job: Job;
  readonly sheets: readonly Sheet[];
  readonly blanks: readonly Blank[];
}

export function asking(job: Job, sheets: readonly Sheet[]): Asking {
  return { job, sheets, blanks: blanksOfAll(sheets).map((blank) => withGiven(job, blank)) };
}

/** Carried by what is made of some sheets of one job. */
export function carriedBy({ job, sheets, blanks }: Asking, recordText: string): Carried {
  return {
    form: carriedVersion,
    machine: sheets[0]?.machine ?? '',
    frame: sheets[0]?.frame ?? '',
    job: job.id,
    sheets: sheets.map(({ id }) => id).join(' '),
    record: recordPrint(recordText),
    asked: askedPrint(blanks),
  };
}

/** The job whose record keeps what is written on a sheet: its own, or the first open one of a kind that keeps it. */
export function keepingJob(sheet: Sheet, book: Binder['book']): Job | undefined {
  if (sheet.job !== undefined) return book.jobs.get(sheet.job);
  return book.plans.find(({ job }) => sheet.keptBy?.includes(job.kind) === true)?.job;
}

/** Twelve characters over the text of a record. */
export function recordPrint(text: string): string {
  return hashOf(text).slice(0, 12);
}

/** Twelve characters over what is asked. What is known already and what was read last may change without harm. */
export function askedPrint(blanks: readonly Blank[]): string {
  const parts = blanks.map(({ id, kind, asks, unit, standard, limit }) => [id, kind, asks, unit, standard, limit]);
  return hashOfData(parts).slice(0, 12);
}

/** The form of a sheet for the record of a job; undefined where nothing on it is kept. */
export function formOf(sheet: Sheet, job: Job, recordText: string): Form | undefined {
  const asked = asking(job, [sheet]);
  if (asked.blanks.length === 0) return undefined;
  const fields = new Map(asked.blanks.map((blank) => [blank.id, fieldOf(blank)]));
  return { field: (id) => fields.get(id), carries: { ...carriedBy(asked, recordText) } };
}

function fieldOf(blank: Blank): FormField {
  return {
    kind: blank.kind === 'tick' ? 'tick' : 'text',
    asks: askedInWords(blank),
    ...(blank.given === undefined ? {} : { given: blank.given }),
  };
}

/** All that must be known to answer a blank, in one line to be read out: item, unit, standard, limit, last reading, caution. */
export function askedInWords(blank: Blank): string {
  const parts = [
    blank.step === undefined ? '' : `${blank.step}.`,
    blank.asks,
    blank.unit === undefined || blank.unit === '' ? '' : `in ${blank.unit}`,
    blank.standard === undefined ? '' : `standard ${blank.standard}`,
    blank.limit === undefined ? '' : `limit ${blank.limit}`,
    blank.last === undefined ? '' : `last ${blank.last}`,
    blank.caution === undefined ? '' : `${blank.caution.grade}: ${blank.caution.text}`,
  ];
  const [step = '', ...rest] = parts;
  const said = rest.filter((part) => part !== '').join('; ');
  return step === '' ? said : `${step} ${said}`;
}
