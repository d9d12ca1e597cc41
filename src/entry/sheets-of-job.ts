// The sheets that one job's record keeps, in the order in which they are worked down.
import type { Sheet } from '../sheet/sheet.ts';

/** Off, measured, on again; other sheets of the job after them. */
const order = ['teardown', 'measuring', 'assembly'];

/** Sheets of a job; none where the job is done or has no sheet. */
export function sheetsOfJob(sheets: readonly Sheet[], job: string): readonly Sheet[] {
  const place = (sheet: Sheet): number => {
    const at = order.findIndex((name) => sheet.id === `${name}-${job}`);
    return at < 0 ? order.length : at;
  };
  return sheets.filter((sheet) => sheet.job === job).toSorted((a, b) => place(a) - place(b));
}

/** The sheets of the machine whose blanks a job of this kind keeps: the intake’s by an intake, the hold point’s by a first start. */
export function machineSheetsFor(sheets: readonly Sheet[], kind: string): readonly Sheet[] {
  return sheets.filter((sheet) => sheet.job === undefined && sheet.keptBy?.includes(kind) === true);
}
