// Published tables, compiled in: typed rows with their source, no disk. A cell with a unit becomes a figure with its origin.
import type { Figure } from '../figure/figure.ts';
import type { Dimension, Unit } from '../quantity/quantity.ts';
import { of } from '../quantity/quantity.ts';
import { readNumber } from '../quantity/read-number.ts';
import { spellingKey } from '../quantity/unit-spelling.ts';
import { cellDecimals } from './cell-decimals.ts';
import { compiled } from './compiled.ts';
import { readCsv } from './csv.ts';

/** How a row was obtained: seen in the source, from a program library, computed, or recalled. */
export type Obtained = 'read' | 'library' | 'computed' | 'memory';

export interface TableSource {
  readonly title: string;
  readonly place: string;
  readonly how: Obtained;
}

/** What stands above a table: title, edition, number, how it was obtained, what it is used for, remarks. */
export interface TableAbout {
  readonly table: string;
  readonly title: string;
  readonly edition: string;
  readonly number: string;
  readonly obtained: string;
  readonly units: string;
  readonly use: string;
  readonly sources?: Readonly<Record<string, TableSource>>;
  readonly remarks: string;
}

export interface Column {
  readonly name: string;
  /** Symbol in square brackets in the head, or ''. */
  readonly unit: string;
}

export interface Row {
  readonly id: string;
  readonly how: Obtained;
  /** Where the row comes from, as printed. */
  readonly source: string;
  readonly cells: Readonly<Record<string, string>>;
}

export interface Table {
  readonly id: string;
  readonly about: TableAbout;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly byId: ReadonlyMap<string, Row>;
}

const made = new Map<string, Table>();

/** Ids of all tables, in alphabetical order. */
export const tableIds: readonly string[] = Object.keys(compiled);

function obtained(text: string): Obtained {
  return text === 'read' || text === 'library' || text === 'computed' ? text : 'memory';
}

function columnOf(head: string): Column {
  const parts = /^(.*?)\s*\[(.*)\]$/.exec(head);
  return parts === null ? { name: head, unit: '' } : { name: parts[1] ?? '', unit: parts[2] ?? '' };
}

function make(id: string): Table {
  const entry = compiled[id];
  if (entry === undefined) throw new Error('there is no table ' + id);
  const { head, rows: lines } = readCsv(entry.csv);
  const columns = head.map(columnOf);
  const rows = lines.map((line): Row => {
    const cells = Object.fromEntries(columns.map((column, index) => [column.name, line[index] ?? '']));
    return { id: cells['id'] ?? '', how: obtained(cells['how'] ?? ''), source: cells['source'] ?? '', cells };
  });
  return { id, about: entry.about, columns, rows, byId: new Map(rows.map((row) => [row.id, row])) };
}

/** A table by its id; parsed on first use. An unknown id is a bug and throws. */
export function table(id: string): Table {
  const known = made.get(id);
  if (known !== undefined) return known;
  const fresh = make(id);
  made.set(id, fresh);
  return fresh;
}

/** The number in a cell; undefined when the cell is blank, `?`, or the row is not there. */
export function cellNumber(tableId: string, rowId: string, column: string): number | undefined {
  const cell = table(tableId).byId.get(rowId)?.cells[column] ?? '';
  const read = readNumber(cell);
  return read.ok ? read.value.value : undefined;
}

/**
 * A cell as a figure that knows its table and row. `unit` must be the unit in the head of the column (a bug otherwise);
 * undefined when the cell is blank or the row is not there.
 */
export function published<D extends Dimension>(
  tableId: string,
  rowId: string,
  column: string,
  unit: Unit<D>,
): Figure<D> | undefined {
  const found = table(tableId);
  const head = found.columns.find((one) => one.name === column);
  if (head === undefined || spellingKey(head.unit) !== spellingKey(unit.symbol)) {
    throw new Error('column ' + column + ' of ' + tableId + ' is not in ' + unit.symbol);
  }
  const read = readNumber(found.byId.get(rowId)?.cells[column] ?? '');
  if (!read.ok) return undefined;
  const origin = { kind: 'published', table: tableId, row: rowId } as const;
  const { value, decimals } = read.value;
  return { quantity: of(value, unit), unit, decimals: cellDecimals(value, decimals), origin };
}
