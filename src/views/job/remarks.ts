// What was written on a record's sheets and has no other key: words, and how many ticks.
import type { Job, Remark } from '../../records/model.ts';
import type { Block, Row } from '../../sheet/sheet.ts';
import { column, heading, lines, paragraphs, row } from '../wording/blocks.ts';
import { countOf } from '../wording/count.ts';
import { formLine, sheetPlace } from '../wording/sheet-place.ts';
import type { ViewContext } from '../view.ts';

/** A table of the words and a line of the ticks, or nothing. */
export function jobRemarks(context: ViewContext, job: Job, within: string): readonly Block[] {
  const { say } = context;
  const [remarks, ticks] = [job.remarks ?? [], job.ticks ?? []];
  if (remarks.length + ticks.length === 0) return [];
  const table: readonly Block[] =
    remarks.length === 0
      ? []
      : [
          {
            type: 'table',
            columns: [column(say('Where on the sheet'), 5), column(say('Written there'), 7), column(say('Hand'), 2)],
            rows: remarks.map((remark) => remarkRow(context, remark)),
            empty: '',
            use: 'read',
          },
        ];
  const graded = gradesIn(context, ticks);
  const plain = ticks.length - graded.count;
  const ticked = countOf(plain, say('step ticked'), say('steps ticked'));
  return [
    heading(3, say('Written on the sheets'), `${within}remarks`),
    ...table,
    ...(graded.lines.length === 0 ? [] : [lines(graded.lines)]),
    ...(plain === 0 ? [] : [paragraphs(ticked)]),
  ];
}

function remarkRow(context: ViewContext, remark: Remark): Row {
  return row(sheetPlace(context, remark.blank), remark.says, remark.by ?? '');
}

/** A line a grade, with all that it was given to, in the order in which it was ticked. */
function gradesIn(
  context: ViewContext,
  ticks: readonly string[],
): { readonly lines: readonly string[]; readonly count: number } {
  const byGrade = new Map<string, string[]>();
  let count = 0;
  for (const tick of ticks) {
    const found = formLine(context, tick);
    if (found?.grade === undefined) continue;
    count += 1;
    byGrade.set(found.grade, [...(byGrade.get(found.grade) ?? []), found.line]);
  }
  const lines = [...byGrade].map(([grade, things]) => `${context.say(grade)}: ${things.join('; ')}`);
  return { lines, count };
}
