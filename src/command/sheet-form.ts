// A sheet as a form: its blanks as fields, and what a filled form must carry to find its way back into the record.
import type { Sheet } from '../build.ts';
import { hashOf, hashOfData } from '../cache/hash.ts';
import type { Blank } from '../entry/blank.ts';
import { blanksOf } from '../entry/blanks-of.ts';
import type { Form, FormField } from '../pdf/form.ts';

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

/** Carried by what is made of some sheets of one job; undefined where no record keeps them. */
export function carriedBy(sheets: readonly Sheet[], blanks: readonly Blank[], recordText: string): Carried | undefined {
  const [sheet] = sheets;
  if (sheet?.job === undefined) return undefined;
  return {
    form: carriedVersion,
    machine: sheet.machine,
    frame: sheet.frame,
    job: sheet.job,
    sheets: sheets.map(({ id }) => id).join(' '),
    record: recordPrint(recordText),
    asked: askedPrint(blanks),
  };
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

/** The form of a sheet of a job; undefined where no record keeps what is written on it. */
export function formOf(sheet: Sheet, recordText: string): Form | undefined {
  const blanks = blanksOf(sheet);
  const carries = carriedBy([sheet], blanks, recordText);
  if (carries === undefined || blanks.length === 0) return undefined;
  const fields = new Map(blanks.map((blank) => [blank.id, fieldOf(blank)]));
  return { field: (id) => fields.get(id), carries: { ...carries } };
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
