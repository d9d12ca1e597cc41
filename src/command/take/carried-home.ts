// Whose answers these are: what a form or a text from a telephone carries, held against the records at hand.
import type { Binder, Sheet } from '../../build.ts';
import type { Job } from '../../records/model.ts';
import { carriedVersion, type Carried } from '../sheet-form.ts';

const keys = ['form', 'machine', 'frame', 'job', 'sheets', 'record', 'asked'] as const;

/** What was carried, or a sentence that says why it is of no use. */
export function readCarried(text: string | undefined): Carried | string {
  if (text === undefined)
    return 'It does not carry what says whose answers these are: it was not made by `splitpin print --form`, or the program that saved it took that away. Nothing was taken; type it in with `splitpin fill`.';
  const found = valuesIn(text);
  const texts = keys.map((key) => found[key]);
  if (texts.some((value) => value === undefined))
    return 'What it carries of its machine and job is damaged. Nothing was taken.';
  const [form = '', machine = '', frame = '', job = '', sheets = '', record = '', asked = ''] = texts;
  if (form !== carriedVersion)
    return `It was made in format ${form.slice(0, 8)}, and this program reads format ${carriedVersion}: read it with the program that made it.`;
  return { form, machine, frame, job, sheets, record, asked };
}

function valuesIn(text: string): Readonly<Partial<Record<string, string>>> {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return {};
    return Object.fromEntries(
      Object.entries(value).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
    );
  } catch {
    return {};
  }
}

export interface Home {
  readonly sheets: readonly Sheet[];
  readonly job: Job;
  /** File of the record. */
  readonly file: string;
  readonly title: string;
}

/** The job that the answers are of, with its sheets as they are now; or a sentence. */
export function homeOf(carried: Carried, binder: Binder): Home | string {
  const { machine } = binder.book.records;
  if (!sameMachine(carried, machine.name, binder.frame))
    return `It is of another machine: ${carried.machine}${carried.frame === '' ? '' : `, frame …${carried.frame}`}. This folder is of ${machine.name}${binder.frame === '' ? '' : `, frame …${binder.frame}`}. Nothing was taken.`;
  const job = binder.book.jobs.get(carried.job);
  if (job === undefined)
    return `It is of the job ${carried.job}, of which this folder has no record (it may have been renamed, or have a problem of its own: see splitpin check). Nothing was taken.`;
  // In the order in which they were asked, for what was asked is compared.
  const sheets = carried.sheets
    .split(' ')
    .flatMap((id) => binder.sheets.filter((sheet) => sheet.id === id && keeps(job, sheet)));
  if (sheets.length === 0)
    return `${job.file} is ${job.state}, and a job that is has no sheets to be filled in any more. Set its state back, or write the answers into it by hand. Nothing was taken.`;
  return { sheets, job, file: job.file, title: job.title };
}

/** By the frame where both are known, for a machine may be renamed; else by the name, for a frame may be read later. */
function sameMachine(carried: Carried, name: string, frame: string): boolean {
  if (carried.frame !== '' && frame !== '') return carried.frame === frame;
  return carried.machine === name;
}

/** Its own sheets, and those of the machine that a job of its kind keeps. */
function keeps(job: Job, sheet: Sheet): boolean {
  return sheet.job === job.id || (sheet.job === undefined && sheet.keptBy?.includes(job.kind) === true);
}
