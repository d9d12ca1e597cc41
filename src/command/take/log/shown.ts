// What will be made of a log, in lines for the person who decides.
import { count } from '../../count.ts';
import { otherColumns } from './columns.ts';
import type { Entries } from './entries.ts';
import type { FoundManner } from './manner.ts';
import type { LogRecord } from './records.ts';

/** So many records are shown one by one. */
const shownFirst = 6;

/** The mapping: which column is what, and how it is read. */
export function mannerLines(manner: FoundManner): readonly string[] {
  const { columns, because } = manner;
  const named = (indexes: readonly number[]): string =>
    indexes.map((index) => `${String(index + 1)} “${columns.headings[index] ?? ''}”`).join(' and ');
  const line = (name: string, indexes: readonly number[], how: string | undefined): string =>
    indexes.length === 0
      ? `  ${name.padEnd(9)} no column`
      : `  ${name.padEnd(9)} column ${named(indexes)}${how === undefined || how === '' ? '' : `: ${how}`}`;
  const others = otherColumns(columns);
  return [
    columns.headed ? '  the first row is the heading' : '  there is no heading',
    line('date', columns.of.date, because.date),
    line('odometer', columns.of.odometer, because.odometer),
    line('text', columns.of.text, undefined),
    line('cost', columns.of.cost, because.cost),
    ...(others.length === 0 ? [] : [line('others', others, 'kept in the words of the record')]),
  ];
}

/** Rows that are not as the others are. */
export function oddLines(file: string, { asWords }: Entries): readonly string[] {
  return asWords.map(
    ({ line, text }) => `${file}:${String(line)}: kept as words, for it cannot be read as a figure: ${text}`,
  );
}

/** The records as they would be written. */
export function recordLines(records: readonly LogRecord[], per: string, kind: string): readonly string[] {
  const [first, last] = [records[0], records.at(-1)];
  if (first === undefined || last === undefined) return [];
  const span = `${first.entries[0]?.day ?? ''} to ${last.entries[0]?.day ?? ''}`;
  const rest = records.length - shownFirst;
  return [
    `${count(records.length, 'record')}, one a ${per}, ${span}, kind “${kind}”:`,
    ...records.slice(0, shownFirst).map(recordLine),
    ...(rest > 0 ? [`  … and ${count(rest, 'more', 'more')}`] : []),
  ];
}

function recordLine({ file, entries }: LogRecord): string {
  const figures = entries.flatMap((entry) => [entry.odometer ?? [], entry.cost ?? []].flat());
  return `  ${file}${figures.length === 0 ? '' : `   ${figures.join(', ')}`}`;
}
