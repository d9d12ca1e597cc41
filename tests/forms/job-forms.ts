// The sheets of the jobs of three machines as forms, made once: what is printed, what is asked, and the bytes.
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFCheckBox, PDFDocument, PDFTextField } from 'pdf-lib';
import { readMachine, type ReadMachine } from '../../src/command/read-machine.ts';
import { asking, formOf, keepingJob } from '../../src/command/sheet-form.ts';
import type { Blank } from '../../src/entry/blank.ts';
import { carrierName, fieldName } from '../../src/pdf/form.ts';
import type { Job } from '../../src/records/model.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { makePdf } from '../pdf/read-pdf.ts';
import { keeper } from '../set-up/kept.ts';

export const today = '2026-11-21';
export const machines = [
  'demo-bike',
  'tests/fixtures/tern-350',
  'tests/fixtures/finch-125',
  'tests/fixtures/from-the-manual',
] as const;

export interface JobForm {
  readonly machine: string;
  readonly read: ReadMachine;
  readonly job: Job;
  readonly sheet: Sheet;
  readonly blanks: readonly Blank[];
  readonly bytes: Buffer;
}

/** Every sheet that a job record keeps, as a form. */
export async function jobForms(machine: string): Promise<readonly JobForm[]> {
  return kept(machine, today);
}

const kept = keeper(async (machine) => makeForms(machine, () => true));

/** The form of one sheet. */
export async function jobForm(machine: string, id: string): Promise<JobForm | undefined> {
  const [form] = await makeForms(machine, (sheet) => sheet.id === id);
  return form;
}

async function makeForms(machine: string, isWanted: (sheet: Sheet) => boolean): Promise<readonly JobForm[]> {
  const read = readMachine(machine, today, {});
  const { binder } = read;
  if (binder === undefined) throw new Error(`${machine} cannot be read`);
  const forms: JobForm[] = [];
  for (const sheet of binder.sheets.filter(isWanted)) {
    const job = keepingJob(sheet, binder.book);
    const form = job === undefined ? undefined : formOf(sheet, job, read.textOf(job.file) ?? '');
    if (job === undefined || form === undefined) continue;
    const { bytes } = await makePdf(sheet, { form });
    forms.push({ machine, read, job, sheet, blanks: asking(job, [sheet]).blanks, bytes });
  }
  return forms;
}

/** A form filled by a library that is not the one that made it; ticks are `yes`. Gives the bytes that it saves. */
export async function filled(bytes: Uint8Array, answers: Readonly<Record<string, string>>): Promise<Uint8Array> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  const form = document.getForm();
  for (const [id, value] of Object.entries(answers)) {
    const field = form.getField(fieldName(id));
    if (field instanceof PDFTextField) field.setText(value);
    else if (field instanceof PDFCheckBox && value === 'yes') field.check();
    else if (field instanceof PDFCheckBox) field.uncheck();
  }
  // Letters that its standard font lacks must not hinder it: viewers draw what they can.
  return document.save({ updateFieldAppearances: false });
}

/** Names of all fields but the hidden one, as the file has them. */
export async function fieldsIn(bytes: Uint8Array): Promise<readonly string[]> {
  const document = await PDFDocument.load(bytes);
  const names = document
    .getForm()
    .getFields()
    .map((field) => field.getName());
  return names.filter((name) => name !== carrierName);
}

/** A copy of a machine folder that a test may write to. */
export function copyOf(machine: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'splitpin-forms-'));
  cpSync(machine, folder, { recursive: true });
  return folder;
}

export function remove(folder: string): void {
  rmSync(folder, { recursive: true, force: true });
}

/** Every file of a folder with its bytes, to see that nothing was touched. */
export function bytesOf(folder: string): ReadonlyMap<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  return new Map(
    files.map((one) => {
      const path = join(one.parentPath, one.name);
      return [path, readFileSync(path, 'base64')];
    }),
  );
}
