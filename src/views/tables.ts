// The published tables that calculations use: title, edition, how obtained, the very rows that the code is tested against, and their sources.
import { cellText } from '../table/cell-decimals.ts';
import { table, tableIds } from '../table/table.ts';
import type { Column as TableColumn, Row as TableRow, Table, TableSource } from '../table/table.ts';
import type { Block, Column } from '../sheet/sheet.ts';
import { column, fact, filledOnly, heading, row } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { inputsAsSet } from './wording/published-inputs.ts';
import { asSet, behindNumber } from './wording/published-unit.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

type Say = ViewContext['say'];

export const tables = defineView({
  id: 'tables',
  purpose: 'Published tables with their rows; one of them where `of` names it.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const wanted = context.options['of'];
    return tableIds.filter((id) => wanted === undefined || id === wanted).flatMap((id) => tableBlocks(context, id));
  },
});

/** One table with what stands above it, and below it the sources that its rows name by number. */
export function tableBlocks({ say }: ViewContext, id: string): readonly Block[] {
  const one = table(id);
  const { about, rows } = one;
  const sources = Object.entries(about.sources ?? {});
  const places = placesOf(one, say, new Map(sources.map(([key], at) => [key, count(at + 1)])));
  return [
    heading(2, say(about.title), id),
    {
      type: 'facts',
      facts: [
        ...fact(say('Edition'), about.edition),
        ...fact(say('Number'), about.number),
        ...fact(say('How obtained'), about.obtained),
        ...fact(say('Units'), about.units),
        ...fact(say('Used for'), say(about.use)),
        ...fact(say('Remarks'), say(about.remarks)),
      ],
    },
    filledOnly({
      type: 'table',
      columns: places.map(({ head }) => head),
      rows: rows.map((line) => row(...places.map(({ cell }) => cell(line)))),
      empty: say('This table has no rows.'),
      use: 'read',
    }),
    ...sourceBlocks(say, id, sources),
  ];
}

/** A column as it is shown: its head, and what stands under it in a row. */
interface Place {
  readonly head: Column;
  readonly cell: (line: TableRow) => string;
}

/** Columns as shown. Rows that say in words what they are go without the name the code has for them, and their unit stands behind the number. */
function placesOf(one: Table, say: Say, numbers: ReadonlyMap<string, string>): readonly Place[] {
  const inWords = one.columns.some(({ name }) => name === 'quantity');
  return one.columns
    .filter(({ name }) => !inWords || (name !== 'id' && name !== 'unit'))
    .map((shown) => {
      const head = column(say(headOf(shown)), 3, isOfNumbers(one, shown) ? 'right' : 'left');
      return { head, cell: (line) => say(cellOf(line, shown, numbers)) };
    });
}

const heads: Readonly<Record<string, string>> = {
  id: 'Name',
  inputs: 'Worked from',
  how: 'Obtained',
  tolerance: 'Allowed',
};

function headOf({ name, unit }: TableColumn): string {
  const words = heads[name] ?? `${name.slice(0, 1).toUpperCase()}${name.slice(1)}`;
  return unit === '' ? words : `${words}, ${asSet(unit)}`;
}

function cellOf({ cells }: TableRow, { name, unit }: TableColumn, numbers: ReadonlyMap<string, string>): string {
  const cell = cells[name] ?? '';
  if (unit !== '') return cellText(cell);
  if (name === 'inputs') return inputsAsSet(cell);
  if (name === 'value') return `${asSet(cell)}${behindNumber(cells['unit'] ?? '')}`;
  if (name !== 'source' || numbers.size === 0) return asSet(cell);
  return cell
    .split(' ')
    .map((key) => numbers.get(key) ?? key)
    .join(', ');
}

/** The sources of a table, numbered as its rows name them. */
function sourceBlocks(say: Say, id: string, sources: readonly (readonly [string, TableSource])[]): readonly Block[] {
  if (sources.length === 0) return [];
  const items = sources.map(([, { title, place, how }]) => {
    const text = [title, place, say(how)].filter((part) => part !== '').join('; ');
    return [{ kind: 'paragraph', text } as const];
  });
  return [
    heading(3, say('Sources of these rows'), `sources-of-${id}`),
    { type: 'prose', paragraphs: [{ kind: 'list', ordered: true, items }] },
  ];
}

function isOfNumbers({ columns, rows }: Table, { name, unit }: TableColumn): boolean {
  return unit !== '' || (columns[0]?.name !== name && rows.every(({ cells }) => isNumber(cells[name] ?? '')));
}

/** Whether a cell has nothing but a number, or nothing. */
function isNumber(cell: string): boolean {
  return /^(?:[-−]?\d+(?:\.\d+)?)?$/u.test(cell);
}
