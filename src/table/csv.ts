// Comma-separated values as our tables use them: a head, quoted cells where needed, no more.

function splitLine(line: string): readonly string[] {
  if (!line.includes('"')) return line.split(',');
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < line.length; at += 1) {
    const character = line[at] ?? '';
    if (quoted && character === '"' && line[at + 1] === '"') {
      cell += '"';
      at += 1;
    } else if (character === '"') quoted = !quoted;
    else if (character === ',' && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += character;
  }
  return [...cells, cell];
}

/** Rows of cells; the first is the head. Every row has as many cells as the head, or it is a bug of the table. */
export function readCsv(text: string): {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
} {
  const lines = text.split('\n').filter((line) => line !== '');
  const [head = [], ...rows] = lines.map(splitLine);
  const odd = rows.find((row) => row.length !== head.length);
  if (odd !== undefined) throw new Error('a row of a table has not as many cells as its head: ' + odd.join(','));
  return { head, rows };
}
