// The no-start card: spark, fuel, compression, air; each with what is seen, what it means, and the next cheap test.
import type { Row } from '../sheet/sheet.ts';
import type { NoStartLine } from '../records/content-model.ts';
import { appliesTo } from '../book/applies.ts';
import { column, heading, row, sentence } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const groups: readonly NoStartLine['group'][] = ['spark', 'fuel', 'compression', 'air'];

export const noStartCard = defineView({
  id: 'no-start-card',
  purpose: 'Spark, fuel, compression, air: what is seen, what it means, the next cheap test.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say } = context;
    return [
      heading(2, say('It does not start'), 'no-start'),
      {
        type: 'table',
        columns: [column(say('What you see'), 4), column(say('What it means'), 4), column(say('Next cheap test'), 5)],
        rows: groups.flatMap((group) => groupRows(context, group)),
        empty: say('There is no fault table for this machine.'),
        use: 'card',
      },
    ];
  },
});

function groupRows(context: ViewContext, group: NoStartLine['group']): readonly Row[] {
  const { book, say } = context;
  const fitting = book.content.noStart.filter(
    (line) => line.group === group && appliesTo(line.applies, book.records.machine.features),
  );
  if (fitting.length === 0) return [];
  return [
    { kind: 'band', text: [{ kind: 'strong', text: sentence(say(group)) }] },
    ...fitting.flatMap((line, index) => [
      ...(isFirst(fitting, index) ? cautionRow(context, line.caution ?? '') : []),
      row(say(line.saw), say(line.means), say(line.next)),
    ]),
  ];
}

/** A caution stands once in its group, at the first line that needs it. */
function isFirst(lines: readonly NoStartLine[], index: number): boolean {
  const caution = lines[index]?.caution;
  return caution !== undefined && lines.findIndex((line) => line.caution === caution) === index;
}
