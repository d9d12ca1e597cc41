// A log's rows as entries: day, odometer, words, sum; what cannot be read as what it should be stays in the words.
import type { Columns, Role } from './columns.ts';
import { otherColumns } from './columns.ts';
import { besideNumber, plainNumber, type Decimal } from './numbers.ts';
import { dayIn, type Order } from './dates.ts';
import type { Row } from './rows.ts';

export interface LogEntry {
  readonly line: number;
  /** `2024-05-04`. */
  readonly day: string;
  /** With its unit: `7512 mi`. */
  readonly odometer?: string;
  readonly text: string;
  /** With its currency: `12.50 GBP`; money that came back has a minus. */
  readonly cost?: string;
  /** What the other columns said, and cells that are no figure: `mechanic: self`. */
  readonly beside: readonly string[];
  /** The row as it stands in the file. */
  readonly cells: readonly string[];
}

/** How the log is read, as it was found and said. */
export interface LogManner {
  readonly columns: Columns;
  readonly order: Order;
  readonly century: string;
  readonly decimal: Decimal;
  /** Unit of an odometer cell that has none; `in words` keeps all of them as words. */
  readonly unit: string | undefined;
  /** Currency of a cost cell that names none. */
  readonly currency: string;
}

export interface Entries {
  readonly entries: readonly LogEntry[];
  /** Rows without a day that can be read: line and what stands there. */
  readonly undated: readonly { readonly line: number; readonly text: string }[];
  /** What was kept as words though it stood in a column of figures. */
  readonly asWords: readonly { readonly line: number; readonly text: string }[];
}

/** All cells of one role in a row, joined. */
export function cellOf(row: Row, columns: Columns, role: Role): string {
  return columns.of[role]
    .map((index) => row.cells[index] ?? '')
    .filter((cell) => cell !== '')
    .join('; ');
}

/** The rows below the heading as entries. */
export function entriesOf(rows: readonly Row[], manner: LogManner): Entries {
  const entries: LogEntry[] = [];
  const undated: { line: number; text: string }[] = [];
  const asWords: { line: number; text: string }[] = [];
  for (const row of rows) {
    const written = cellOf(row, manner.columns, 'date');
    const day = dayIn(written, manner.order, manner.century);
    if (day === undefined) {
      undated.push({ line: row.line, text: written });
      continue;
    }
    const read = figuresOf(row, manner);
    asWords.push(...read.words.map((text) => ({ line: row.line, text })));
    entries.push({
      line: row.line,
      day,
      text: cellOf(row, manner.columns, 'text').normalize('NFC'),
      cells: row.cells,
      beside: [...read.words, ...others(row, manner.columns)],
      ...read.figures,
    });
  }
  return { entries, undated, asWords };
}

function figuresOf(row: Row, manner: LogManner) {
  const words: string[] = [];
  const odometerCell = cellOf(row, manner.columns, 'odometer');
  const costCell = cellOf(row, manner.columns, 'cost');
  const odometer = odometerIn(odometerCell, manner);
  const cost = costIn(costCell, manner);
  if (odometerCell !== '' && odometer === undefined) words.push(`odometer: ${odometerCell}`);
  if (costCell !== '' && cost === undefined) words.push(`cost: ${costCell}`);
  return {
    words,
    figures: { ...(odometer === undefined ? {} : { odometer }), ...(cost === undefined ? {} : { cost }) },
  };
}

const units: readonly (readonly [RegExp, string])[] = [
  [/^(?:mi|miles?|m)\.?$/iu, 'mi'],
  [/^(?:km|kms|kilomet(?:er|re)s?)\.?$/iu, 'km'],
];

/** A unit of distance in the words beside a number or in a heading; undefined where there is none. */
export function distanceUnit(words: string): string | undefined {
  return units.find(([pattern]) => pattern.test(words))?.[1];
}

function odometerIn(cell: string, { decimal, unit }: LogManner): string | undefined {
  const number = isFormula(cell) || unit === 'in words' ? undefined : plainNumber(cell, decimal);
  const beside = besideNumber(cell);
  const counted = beside === '' ? unit : distanceUnit(beside);
  return number === undefined || number.startsWith('-') || counted === undefined ? undefined : `${number} ${counted}`;
}

const signs: Readonly<Record<string, string>> = { '£': 'GBP', '€': 'EUR' };

/** A currency in the words beside a number; a dollar sign is the machine's own dollar, if it has one. */
export function currencyIn(words: string, own: string): string | undefined {
  const code = /^[A-Z]{3}$/iu.exec(words)?.[0];
  if (code !== undefined) return code.toUpperCase();
  if (words === '$' && own.endsWith('D')) return own;
  return signs[words];
}

function costIn(cell: string, { decimal, currency }: LogManner): string | undefined {
  const number = isFormula(cell) ? undefined : plainNumber(cell, decimal);
  const beside = besideNumber(cell);
  const paidIn = beside === '' ? currency : currencyIn(beside, currency);
  return number === undefined || paidIn === undefined ? undefined : `${number} ${paidIn}`;
}

/** A cell that a spreadsheet would work out; here it is text. A number with its sign is none. */
function isFormula(cell: string): boolean {
  return /^[=@]|^[+-](?!\s*[£€$]?\s*\d)/u.test(cell);
}

function others(row: Row, columns: Columns): readonly string[] {
  return otherColumns(columns).flatMap((index) => {
    const cell = row.cells[index] ?? '';
    return cell === '' ? [] : [`${columns.headings[index] ?? ''}: ${cell}`];
  });
}
