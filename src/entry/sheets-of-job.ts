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
