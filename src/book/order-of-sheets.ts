// The order in which the sheets of one job are worked down: off, measured, on again; others after them.
const order = ['teardown', 'measuring', 'assembly'];

/** Place of a sheet of a job, by the id of its definition; smaller is earlier. */
export function placeOfSheet(sheet: string): number {
  const at = order.indexOf(sheet);
  return at < 0 ? order.length : at;
}
