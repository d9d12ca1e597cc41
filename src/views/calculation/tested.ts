// The published rows that a calculation is tested against: what is printed there, what was found, and the difference.
import type { ProvedRow } from '../../calc/proved-rows.ts';
import type { Calculation } from '../../calc/calculation.ts';
import { provedRowsOf } from '../../calc/proved-rows.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import { table } from '../../table/table.ts';
import type { Block, Row } from '../../sheet/sheet.ts';
import { column, heading, lines, row } from '../wording/blocks.ts';
import { count, countOf } from '../wording/count.ts';
import { grouped } from '../wording/grouped.ts';
import { asSet, behindNumber } from '../wording/published-unit.ts';
import type { ViewContext } from '../view.ts';

/** So many rows stand on one page; the rest go on further pages. */
export const rowsOnPage = 120;

/** A number with six figures, without zeros that say nothing. */
export function sixFigures(value: number | undefined): string {
  if (value === undefined) return '';
  if (value === 0) return '0';
  const whole = Math.floor(Math.log10(Math.abs(value))) + 1;
  const text = formatDecimal(value, Math.max(0, Math.min(9, 6 - whole)));
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
}

/** A relative difference in percent; `0` where less than a millionth. */
export function differenceText(difference: number | undefined): string {
  if (difference === undefined) return '';
  if (Math.abs(difference) < 1e-6) return '0';
  const percent = difference * 100;
  return `${formatDecimal(percent, Math.abs(percent) < 0.01 ? 4 : 2)}\u00a0%`;
}

function toleranceText(say: (words: string) => string, tolerance: string): string {
  return tolerance === '' ? say('last figure') : asSet(tolerance);
}

function testedRow({ say }: ViewContext, one: ProvedRow): Row {
  const state = one.state === 'passed' ? '' : `${say(one.state)} `;
  return row(
    say(asSet(one.states)),
    `${sixFigures(one.published)}${behindNumber(one.unit)}`,
    sixFigures(one.computed),
    `${state}${differenceText(one.difference)}`,
    toleranceText(say, one.tolerance),
    say(one.how),
  );
}

/** Rows of one page: `page` counts from 0. */
export function testedBlocks(context: ViewContext, one: Calculation, page: number): readonly Block[] {
  const { say } = context;
  const all = provedRowsOf(one.id);
  const head = heading(2, say('Tested against'), 'tested');
  if (all.length === 0)
    return [
      head,
      lines([
        say(
          'No published row is run against this calculation. It is held by its example, and by what is asked of every one: the same in any unit, and a word for what is missing.',
        ),
      ]),
    ];
  const shown = all.slice(page * rowsOnPage, (page + 1) * rowsOnPage);
  return [head, lines([summary(context, all)]), rowsTable(context, shown), ...sources(context, shown)];
}

function summary({ say }: ViewContext, all: readonly ProvedRow[]): string {
  const of = (wanted: (row: ProvedRow) => boolean): string => count(all.filter(wanted).length);
  return [
    countOf(all.length, say('published row'), say('published rows')),
    `${of((row) => row.state === 'passed')} ${say('passed')}`,
    `${of((row) => row.state === 'failed')} ${say('failed')}`,
    `${of((row) => row.how === 'memory')} ${say('of them from memory')}`,
  ].join(', ');
}

function rowsTable(context: ViewContext, shown: readonly ProvedRow[]): Block {
  const { say } = context;
  const byTable = grouped(shown, (row) => row.table);
  return {
    type: 'table',
    columns: [
      column(say('Row'), 8),
      column(say('Published'), 3, 'right'),
      column(say('Worked out'), 3, 'right'),
      column(say('Difference'), 3, 'right'),
      column(say('Allowed'), 3),
      column(say('Obtained'), 2),
    ],
    rows: [...byTable].flatMap(([id, rows]): readonly Row[] => [
      { kind: 'band', text: [{ kind: 'link', text: say(table(id).about.title), to: `page:tables/${id}.html` }] },
      ...rows.map((row) => testedRow(context, row)),
    ]),
    empty: '',
    use: 'read',
  };
}

/** Titles of the sources of these rows, each once. */
function sources({ say }: ViewContext, shown: readonly ProvedRow[]): readonly Block[] {
  const titles = new Set(
    shown.flatMap((row) =>
      row.source.split(' ').map((key) => {
        const source = table(row.table).about.sources?.[key];
        return source === undefined
          ? key
          : [source.title, source.place, say(source.how)].filter((one) => one !== '').join('; ');
      }),
    ),
  );
  const named = [...titles].filter((title) => title !== '').toSorted();
  return named.length === 0 ? [] : [heading(3, say('Sources of these rows'), 'row-sources'), lines(named)];
}
