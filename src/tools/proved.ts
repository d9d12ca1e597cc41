// Runs every published row and keeps the outcome in src/calc/proved.ts, so that the site shows it without running it. Run after a change in calc/ or shared/.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { checkPublished } from '../calc/proof.ts';

const target = fileURLToPath(new URL('../calc/proved.ts', import.meta.url));

/** Seven figures are enough to see a difference, and are the same on every machine. */
function short(value: number | undefined): string {
  return value === undefined ? '' : String(Number(value.toPrecision(7)));
}

/** One line for each row, parted by tabs. */
export function provedLines(): string {
  return checkPublished()
    .map((one) =>
      [
        one.calculation ?? '',
        one.table,
        one.row,
        one.state,
        short(one.published),
        short(one.computed),
        one.why ?? '',
      ].join('\t'),
    )
    .join('\n');
}

/** The text of proved.ts, as the formatter leaves it. */
function provedText(): string {
  const quoted = "'" + JSON.stringify(provedLines()).slice(1, -1).replaceAll("'", "\\'") + "'";
  return [
    '// Made by src/tools/proved.ts; do not edit. calculation, table, row, state, published, computed, why not run.',
    'export const proved: string =',
    '  ' + quoted + ';',
    '',
  ].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(target, provedText());
