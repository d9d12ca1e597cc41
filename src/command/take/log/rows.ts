// Rows of a text in columns (RFC 4180), each with the line it begins on.
import { CsvError, parse } from 'csv-parse/sync';

export interface Row {
  /** Line of the file on which the row begins, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export type Rows =
  | { readonly ok: true; readonly rows: readonly Row[] }
  | { readonly ok: false; readonly line: number; readonly why: string };

export const separators = { comma: ',', semicolon: ';', tab: '\t', pipe: '|' } as const;
export type Separator = keyof typeof separators;

/** Reads the rows; a broken quote is named with the line on which it was opened. */
export function rowsOf(text: string, separator: Separator): Rows {
  try {
    const read: unknown = parse(text, {
      delimiter: separators[separator],
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
      max_record_size: 200_000,
    });
    return { ok: true, rows: asRows(read) };
  } catch (cause) {
    if (!(cause instanceof CsvError)) throw cause;
    return { ok: false, ...brokenAt(cause, text, separators[separator]) };
  }
}

function asRows(read: unknown): readonly Row[] {
  const rows: Row[] = [];
  let before = 0;
  for (const one of Array.isArray(read) ? read : []) {
    const { record, info } = rowParts(one);
    // The reader counts the lines up to the end of a row: it began as many lines earlier as its cells have ends of lines.
    const inside = record.join('').split(/\r\n|\r|\n/u).length - 1;
    const line = Math.max(before + 1, info - inside);
    before = info;
    if (record.some((cell) => cell !== '')) rows.push({ line, cells: record });
  }
  return rows;
}

function rowParts(one: unknown): { readonly record: readonly string[]; readonly info: number } {
  if (typeof one !== 'object' || one === null || !('record' in one) || !('info' in one)) return { record: [], info: 0 };
  const cells: readonly unknown[] = Array.isArray(one.record) ? one.record : [];
  const { info } = one;
  const lines = typeof info === 'object' && info !== null && 'lines' in info ? Number(info.lines) : 0;
  return { record: cells.map((cell) => String(cell)), info: lines };
}

const reasons: Readonly<Record<string, string>> = {
  CSV_QUOTE_NOT_CLOSED:
    'a quote is opened and never closed; close it, or write two quotes for one that belongs to the text',
  INVALID_OPENING_QUOTE:
    'a quote stands in the middle of a cell; put the whole cell in quotes and write this one twice',
  CSV_INVALID_CLOSING_QUOTE: 'something follows a closing quote; a quote that belongs to the text is written twice',
  CSV_NON_TRIMABLE_CHAR_AFTER_CLOSING_QUOTE:
    'something follows a closing quote; a quote that belongs to the text is written twice',
  CSV_MAX_RECORD_SIZE: 'this row is longer than a row can be; look for a quote that is never closed',
};

function brokenAt(cause: CsvError, text: string, separator: string): { readonly line: number; readonly why: string } {
  const counted = 'lines' in cause ? Number(cause.lines) : 1;
  const open = cause.code === 'CSV_QUOTE_NOT_CLOSED' || cause.code === 'CSV_MAX_RECORD_SIZE';
  return {
    line: open ? lastOpened(text, separator) : counted,
    why: reasons[cause.code] ?? 'this row cannot be read',
  };
}

/** Line of the last quote that opens a cell. */
function lastOpened(text: string, separator: string): number {
  let line = 1;
  let opened = 1;
  let inside = false;
  for (let at = 0; at < text.length; at += 1) {
    const character = text.charAt(at);
    if (character === '\n') line += 1;
    if (character !== '"') continue;
    if (inside && text.charAt(at + 1) === '"') at += 1;
    else if (inside) inside = false;
    else if (at === 0 || [separator, '\n', '\r', ' '].includes(text.charAt(at - 1))) {
      inside = true;
      opened = line;
    }
  }
  return opened;
}

/**
 * Separators that cut the text into at least two columns, the likeliest first: the one by which most rows have as many cells as the first.
 */
export function separatorsOf(text: string): readonly Separator[] {
  const head = text
    .split(/\r\n|\r|\n/u)
    .slice(0, 200)
    .join('\n');
  const names = Object.keys(separators).filter((name): name is Separator => name in separators);
  const tried = names.flatMap((name) => {
    const read = rowsOf(head, name);
    const rows = read.ok ? read.rows : [];
    const width = rows[0]?.cells.length ?? 0;
    if (width < 2) return [];
    const alike = rows.filter((row) => row.cells.length === width).length / rows.length;
    return [{ name, alike, width }];
  });
  return tried.toSorted((a, b) => b.alike - a.alike || b.width - a.width).map(({ name }) => name);
}
