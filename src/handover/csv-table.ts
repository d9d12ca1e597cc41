// A table as CSV (RFC 4180): commas, quotes doubled, lines end in CR LF; a cell that a spreadsheet would take for a formula is made harmless.

/** The text of a table; every row has as many cells as the head. */
export function csvText(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/** What a spreadsheet begins to compute with; a quote mark before it makes it text, as spreadsheets themselves write it. */
const formula = /^[\s]*[=+\-@\t\r|%]/u;

function cell(text: string): string {
  const harmless = formula.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
