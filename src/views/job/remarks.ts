// What was written on a record's sheets and has no other key: words, and how many ticks.
import type { Job, Remark } from '../../records/model.ts';
import type { Block, Row, Text } from '../../sheet/sheet.ts';
import { column, heading, joined, paragraphs, row } from '../wording/blocks.ts';
import { countOf } from '../wording/count.ts';
import { ours } from '../wording/ours.ts';
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
  const ticked = countOf(ticks.length, say('step ticked'), say('steps ticked'));
  return [
    heading(3, say('Written on the sheets'), `${within}remarks`),
    ...table,
    ...(ticks.length === 0 ? [] : [paragraphs(ticked)]),
  ];
}

function remarkRow(context: ViewContext, remark: Remark): Row {
  return row(placeOf(context, remark.blank), remark.says, remark.by ?? '');
}

/** The step in its own words where content still has it; else the id of the blank, which says what it can. */
function placeOf(context: ViewContext, blank: string): Text {
  const found = /^([^/]+)\/(step|assembly)-(\d+)(?:\/|-|$)/u.exec(blank);
  const procedure = context.book.content.procedures.get(found?.[1] ?? '');
  const steps = found?.[2] === 'step' ? procedure?.steps : procedure?.assembly;
  const step = steps?.[Number(found?.[3]) - 1];
  if (procedure === undefined || step === undefined) return blank.replaceAll('/', ', ');
  return joined([ours(context, procedure.at, procedure.title), ours(context, procedure.at, step.do)], ': ');
}
