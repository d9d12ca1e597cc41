// The sheets that one job's record keeps, in the order in which they are worked down.
import { placeOfSheet } from '../book/order-of-sheets.ts';
import type { Sheet } from '../sheet/sheet.ts';

/** Sheets of a job; none where the job is done or has no sheet. */
export function sheetsOfJob(sheets: readonly Sheet[], job: string): readonly Sheet[] {
  const place = ({ id }: Sheet): number => placeOfSheet(id.slice(0, -`-${job}`.length));
  return sheets.filter((sheet) => sheet.job === job).toSorted((a, b) => place(a) - place(b));
}

/** The sheets of the machine whose blanks a job of this kind keeps: the intake’s by an intake, the hold point’s by a first start. */
export function machineSheetsFor(sheets: readonly Sheet[], kind: string): readonly Sheet[] {
  return sheets.filter((sheet) => sheet.job === undefined && sheet.keptBy?.includes(kind) === true);
}
