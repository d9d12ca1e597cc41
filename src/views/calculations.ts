// The list of calculations by group, each leading to its page, with how it was tested.
import { coverageOf } from '../calc/proved-rows.ts';
import type { Coverage } from '../calc/proved-rows.ts';
import type { Calculation } from '../calc/calculation.ts';
import { groups } from '../calc/groups.ts';
import type { Row } from '../sheet/sheet.ts';
import { column, paragraphs, row } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { usesIn } from './calculation/used.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** The page of a calculation; further pages hold the rest of its published rows. */
export function calculationFile(id: string, page = 0): string {
  return page === 0 ? `calculations/${id}.html` : `calculations/${id}-${count(page + 1)}.html`;
}

export const calculations = defineView({
  id: 'calculations',
  purpose: 'Every calculation by group, with its purpose, its published rows and its uses.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say } = context;
    return [
      paragraphs([
        `${say('Any of them can be worked out at the bench with')} `,
        { kind: 'code', text: 'splitpin work' },
        `. ${say('What was run against published rows, and what was not')}: `,
        { kind: 'link', text: say('coverage'), to: 'page:coverage.html' },
        '.',
      ]),
      {
        type: 'table',
        columns: [
          column(say('Calculation'), 4),
          column(say('What for'), 9),
          column(say('Published rows'), 2, 'right'),
          column(say('Used here'), 2, 'right'),
        ],
        rows: groups().flatMap((group): readonly Row[] => [
          { kind: 'band', text: say(group.name) },
          ...group.calculations.map((one) => rowOf(context, one)),
        ]),
        empty: '',
        use: 'read',
      },
    ];
  },
});

function rowOf({ book, say }: ViewContext, one: Calculation): Row {
  const [tested] = coverageOf([one.id]);
  const uses = usesIn(book, one.id).length;
  return row(
    [{ kind: 'link', text: say(one.name), to: `page:${calculationFile(one.id)}` }],
    say(one.purpose),
    tested === undefined ? '' : rowsText(tested),
    uses === 0 ? '' : count(uses),
  );
}

function rowsText({ passed, failed }: Coverage): string {
  if (passed + failed === 0) return '';
  return failed === 0 ? count(passed) : `${count(passed)}, ${count(failed)} failed`;
}
