// Compiles shared/*.csv and *.md into src/table/compiled.ts, so that calculations run without a disk. Run after a change in shared/.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { load } from 'js-yaml';
import { readCsv } from '../table/csv.ts';

const shared = fileURLToPath(new URL('../../shared/', import.meta.url));
const target = fileURLToPath(new URL('../table/compiled.ts', import.meta.url));
const needed = ['table', 'title', 'edition', 'number', 'obtained', 'units', 'use'] as const;

/** Head of a table's .md file: front matter and remarks. Throws with the file's name when something is missing. */
function readAbout(id: string): unknown {
  const text = readFileSync(shared + id + '.md', 'utf8');
  const parts = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text);
  if (parts === null) throw new Error(id + '.md has no front matter');
  const head: unknown = load(parts[1] ?? '');
  if (typeof head !== 'object' || head === null) throw new Error(id + '.md has no keys');
  const lacking = needed.filter((key) => !(key in head));
  if (lacking.length > 0) throw new Error(id + '.md lacks ' + lacking.join(', '));
  if (!('table' in head) || head.table !== id) throw new Error(id + '.md is headed for another table');
  return { ...head, remarks: (parts[2] ?? '').trim() };
}

/** The text of compiled.ts as it should be. */
export function compileTables(): string {
  const ids = readdirSync(shared)
    .filter((name) => name.endsWith('.csv'))
    .map((name) => name.slice(0, -4))
    .toSorted();
  const entries = ids.map((id) => {
    const csv = readFileSync(shared + id + '.csv', 'utf8');
    const { head } = readCsv(csv);
    const lacking = ['id', 'how', 'source'].filter((column) => !head.includes(column));
    if (lacking.length > 0) throw new Error(id + '.csv lacks the column ' + lacking.join(', '));
    return (
      '  ' +
      JSON.stringify(id) +
      ': { csv: ' +
      JSON.stringify(csv) +
      ', about: ' +
      JSON.stringify(readAbout(id)) +
      ' },'
    );
  });
  return [
    '// Made from shared/ by src/tools/tables.ts; do not edit.',
    "import type { TableAbout } from './table.ts';",
    '',
    'export const compiled: Readonly<Record<string, { readonly csv: string; readonly about: TableAbout }>> = {',
    ...entries,
    '};',
    '',
  ].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(target, compileTables());
