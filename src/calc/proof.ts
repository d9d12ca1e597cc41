// Proof of the shelf: every published row run against the calculation that claims it, with the row's own tolerance.
import { inUnit } from '../quantity/quantity.ts';
import { anyUnitOf } from '../quantity/unit-spelling.ts';
import { table, tableIds } from '../table/table.ts';
import type { Obtained, Row } from '../table/table.ts';
import { proofs } from './proofs.ts';
import { notRun } from './proofs-not-run.ts';
import { workOut } from './work.ts';

/** How a row of a table of published values is run. */
export interface Proof {
  readonly table: string;
  readonly rows: RegExp;
  readonly calculation: string;
  /** Name of the output that the row states. */
  readonly output: string;
  /** Our symbol of the row's unit, where an output has one; the output's own unit when absent. */
  readonly unit?: string;
  /** What is given, from the row's id and inputs. */
  readonly given: (
    parts: RegExpExecArray,
    inputs: Readonly<Record<string, string>>,
    row: Row,
  ) => Readonly<Record<string, string>>;
  /** The row's value where it is not simply the number in its cell. */
  readonly value?: (row: Row, inputs: Readonly<Record<string, string>>) => number;
  /** A number got in another way than from the output (a constant, a cell of another table). */
  readonly computed?: (
    parts: RegExpExecArray,
    inputs: Readonly<Record<string, string>>,
    row: Row,
  ) => number | undefined;
}

/** Rows that are not run, and why. */
export interface NotRun {
  readonly table: string;
  readonly rows: RegExp;
  readonly why: string;
}

export type State = 'passed' | 'failed' | 'not run';

export interface Checked {
  readonly table: string;
  readonly row: string;
  readonly states: string;
  readonly how: Obtained;
  readonly source: string;
  readonly calculation?: string;
  readonly published?: number;
  readonly computed?: number;
  /** Relative difference. */
  readonly difference?: number;
  readonly tolerance: string;
  readonly state: State;
  readonly why?: string;
}

export function inputsOf(row: Row): Readonly<Record<string, string>> {
  const pairs = (row.cells['inputs'] ?? '').split('; ').filter((pair) => pair !== '');
  return Object.fromEntries(pairs.map((pair) => [pair.slice(0, pair.indexOf('=')), pair.slice(pair.indexOf('=') + 1)]));
}

/** Greatest difference that a row allows, absolute, in the row's unit; undefined when it states none. */
export function allowed(tolerance: string, value: number): number | undefined {
  // A rounded last digit of the reader, not of the table, is let pass.
  const rounding = 1e-9 * Math.max(1, Math.abs(value));
  if (tolerance === 'exact') return rounding;
  // Without a tolerance: half of the last digit that is printed.
  if (tolerance === '') return 0.5 * 10 ** -(String(value).split('.')[1] ?? '').length + rounding;
  const parts = /^([\d.e-]+)\s*(%|relative)?/.exec(tolerance);
  if (parts === null) return undefined;
  const number = Number(parts[1]);
  if (parts[2] === '%') return (number / 100) * Math.abs(value) + rounding;
  return parts[2] === 'relative' ? number * Math.abs(value) : number + rounding;
}

function numberOf(proof: Proof, parts: RegExpExecArray, row: Row): number | undefined {
  const inputs = inputsOf(row);
  if (proof.computed !== undefined) return proof.computed(parts, inputs, row);
  const figure = workOut(proof.calculation, proof.given(parts, inputs, row)).figures[proof.output];
  if (figure === undefined) return undefined;
  const unit = proof.unit === undefined ? figure.unit : anyUnitOf(proof.unit);
  return inUnit(figure.quantity, unit ?? figure.unit);
}

function runRow(tableId: string, row: Row): Checked {
  const base = {
    table: tableId,
    row: row.id,
    states: row.cells['quantity'] ?? '',
    how: row.how,
    source: row.source,
    tolerance: row.cells['tolerance'] ?? '',
  };
  const skipped = notRun.find((one) => one.table === tableId && one.rows.test(row.id));
  if (skipped !== undefined) return { ...base, state: 'not run', why: skipped.why };
  for (const proof of proofs) {
    const parts = proof.table === tableId ? proof.rows.exec(row.id) : null;
    if (parts === null) continue;
    const published = proof.value?.(row, inputsOf(row)) ?? Number(row.cells['value']);
    const computed = numberOf(proof, parts, row);
    const room = allowed(base.tolerance, published) ?? 0;
    const passed = computed !== undefined && Math.abs(computed - published) <= room;
    const difference = computed === undefined || published === 0 ? {} : { difference: computed / published - 1 };
    const found = computed === undefined ? {} : { computed };
    return {
      ...base,
      ...found,
      ...difference,
      published,
      calculation: proof.calculation,
      state: passed ? 'passed' : 'failed',
    };
  }
  return { ...base, state: 'not run', why: 'no calculation claims this row yet' };
}

/** Every row of every table of published values, run. */
export function checkPublished(): readonly Checked[] {
  const tables = tableIds.filter((id) => id.startsWith('values-') && id !== 'values-units');
  return tables.flatMap((id) => table(id).rows.map((row) => runRow(id, row)));
}
