// What each calculation was tested against, as kept by the last run: for its page and for the page of coverage.
import { table } from '../table/table.ts';
import type { Obtained } from '../table/table.ts';
import { proved } from './proved.ts';

export interface ProvedRow {
  readonly calculation: string;
  readonly table: string;
  readonly row: string;
  readonly states: string;
  readonly unit: string;
  readonly how: Obtained;
  readonly source: string;
  readonly tolerance: string;
  readonly state: 'passed' | 'failed' | 'not run';
  readonly published?: number;
  readonly computed?: number;
  /** Relative. */
  readonly difference?: number;
  readonly why?: string;
}

let rows: readonly ProvedRow[] | undefined;

function readLine(line: string): ProvedRow {
  const [calculation = '', tableId = '', id = '', state = '', published = '', computed = '', why = ''] =
    line.split('\t');
  const row = table(tableId).byId.get(id);
  const value = row?.cells['value'] ?? '';
  // A row that is run backwards has another quantity beside what was worked out than its own, and not its unit.
  const isOwn = published === '' || Number.isNaN(Number(value)) || isAlike(Number(value), Number(published));
  const numbers =
    published === '' || computed === '' ? {} : { published: Number(published), computed: Number(computed) };
  const off =
    published === '' || computed === '' || Number(published) === 0
      ? {}
      : { difference: Number(computed) / Number(published) - 1 };
  return {
    calculation,
    table: tableId,
    row: id,
    states: row?.cells['quantity'] ?? '',
    unit: isOwn ? (row?.cells['unit'] ?? '') : '',
    how: row?.how ?? 'memory',
    source: row?.source ?? '',
    tolerance: row?.cells['tolerance'] ?? '',
    state: state === 'passed' || state === 'failed' ? state : 'not run',
    ...numbers,
    ...off,
    ...(why === '' ? {} : { why }),
  };
}

function isAlike(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-6 * Math.abs(other);
}

/** Every row of the tables of published values, with what was found. */
export function provedRows(): readonly ProvedRow[] {
  rows ??= proved.split('\n').map(readLine);
  return rows;
}

/** The rows that one calculation was tested against. */
export function provedRowsOf(calculation: string): readonly ProvedRow[] {
  return provedRows().filter((one) => one.calculation === calculation);
}

export interface Coverage {
  readonly calculation: string;
  readonly sources: readonly string[];
  readonly passed: number;
  readonly failed: number;
  /** Of all rows run, those that rest on memory. */
  readonly fromMemory: number;
  /** Largest relative difference. */
  readonly largest: number;
}

/** One line for each of these calculations; without rows all counts are 0. */
export function coverageOf(ids: readonly string[]): readonly Coverage[] {
  return ids.map((calculation) => {
    const own = provedRowsOf(calculation);
    return {
      calculation,
      sources: [...new Set(own.flatMap((row) => row.source.split(' ')))].toSorted(),
      passed: own.filter((row) => row.state === 'passed').length,
      failed: own.filter((row) => row.state === 'failed').length,
      fromMemory: own.filter((row) => row.how === 'memory').length,
      largest: Math.max(0, ...own.map((row) => Math.abs(row.difference ?? 0))),
    };
  });
}
