// Coverage: calculations, the sources of the rows they were run against, how many passed, failed, were not run or rest on memory.
import { coverageOf, provedRows, provedRowsOf } from '../calc/proved-rows.ts';
import type { Coverage, ProvedRow } from '../calc/proved-rows.ts';
import { calculations } from '../calc/list.ts';
import { table } from '../table/table.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { column, heading, lines, row, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { grouped } from './wording/grouped.ts';
import { calculationFile } from './calculations.ts';
import { differenceText } from './calculation/tested.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const coverage = defineView({
  id: 'coverage',
  purpose: 'Calculations, sources, and published rows passed, failed, not run and from memory.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(totals(context), byCalculation(context), untested(context), notRun(context)),
});

function number(rows: readonly ProvedRow[], wanted: (row: ProvedRow) => boolean): string {
  return count(rows.filter(wanted).length);
}

function totals({ say }: ViewContext): Block {
  const rows = provedRows();
  return {
    type: 'facts',
    across: 3,
    facts: [
      { name: say('Published rows'), value: count(rows.length) },
      { name: say('Passed'), value: number(rows, (row) => row.state === 'passed') },
      { name: say('Failed'), value: number(rows, (row) => row.state === 'failed') },
      { name: say('Not run'), value: number(rows, (row) => row.state === 'not run') },
      {
        name: say('Run, but from memory'),
        value: number(rows, (row) => row.state !== 'not run' && row.how === 'memory'),
      },
      { name: say('Calculations'), value: count(calculations.length) },
    ],
  };
}

function byCalculation({ say }: ViewContext): readonly Block[] {
  const tested = coverageOf(calculations.map((one) => one.id)).filter((one) => one.passed + one.failed > 0);
  return [
    heading(2, say('Run against published rows'), 'tested'),
    {
      type: 'table',
      columns: [
        column(say('Calculation'), 5),
        column(say('Sources'), 9),
        column(say('Passed'), 2, 'right'),
        column(say('Failed'), 2, 'right'),
        column(say('From memory'), 2, 'right'),
        column(say('Largest difference'), 3, 'right'),
      ],
      rows: tested.map((one) => coverageRow(say, one)),
      empty: say('No calculation was run against published rows.'),
      use: 'read',
    },
  ];
}

function link(id: string, say: (words: string) => string): Text {
  const name = calculations.find((one) => one.id === id)?.name ?? id;
  return [{ kind: 'link', text: say(name), to: `page:${calculationFile(id)}` }];
}

/** Titles of the sources that its rows name; the bare key where a table says nothing of it. */
function sourceTitles(calculation: string): readonly string[] {
  const titles = provedRowsOf(calculation).flatMap((one) =>
    one.source.split(' ').map((key) => table(one.table).about.sources?.[key]?.title ?? key),
  );
  return [...new Set(titles)].toSorted();
}

function coverageRow(say: (words: string) => string, one: Coverage): Row {
  return row(
    link(one.calculation, say),
    sourceTitles(one.calculation).join('; '),
    count(one.passed),
    count(one.failed),
    one.fromMemory === 0 ? '' : count(one.fromMemory),
    differenceText(one.largest),
  );
}

function untested({ say }: ViewContext): readonly Block[] {
  const open = coverageOf(calculations.map((one) => one.id)).filter((one) => one.passed + one.failed === 0);
  if (open.length === 0) return [];
  return [
    heading(2, say('Without published rows'), 'untested'),
    lines([say('Held by their examples and by properties; no published value is known for them here.')]),
    lines(open.map((one) => link(one.calculation, say))),
  ];
}

/** Rows that are not run, by table and reason. */
function notRun({ say }: ViewContext): readonly Block[] {
  const left = provedRows().filter((row) => row.state === 'not run');
  const reasons = grouped(left, (row) => `${row.table}\t${row.why ?? ''}`);
  return [
    heading(2, say('Not run'), 'not-run'),
    {
      type: 'table',
      columns: [column(say('Table'), 4), column(say('Rows'), 2, 'right'), column(say('Why'), 9)],
      rows: [...reasons].map(([, rows]) => {
        const id = rows[0]?.table ?? '';
        const title: Text = [{ kind: 'link', text: say(table(id).about.title), to: `page:tables/${id}.html` }];
        return row(title, count(rows.length), say(rows[0]?.why ?? ''));
      }),
      empty: say('Every row was run.'),
      use: 'read',
    },
  ];
}
