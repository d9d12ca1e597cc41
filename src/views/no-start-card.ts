// The no-start card: spark, fuel, compression, air; what is seen, what it means, the next cheap test, all worked out of the fault tables.
import type { Row } from '../sheet/sheet.ts';
import { cardLines, type CardLine } from '../book/faults/card-lines.ts';
import { cardParts, type CardPart } from '../records/fault-model.ts';
import { column, heading, row, sentence } from './wording/blocks.ts';
import { cautionRow } from './wording/caution.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const noStartCard = defineView({
  id: 'no-start-card',
  purpose: 'Spark, fuel, compression, air: what is seen, what it means, the next cheap test.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say, book } = context;
    const all = cardLines(book);
    return [
      heading(2, say('It does not start'), 'no-start'),
      {
        type: 'table',
        columns: [column(say('What you see'), 4), column(say('What it means'), 5), column(say('Next cheap test'), 5)],
        rows: cardParts.flatMap((part) => partRows(context, all, part)),
        empty: say('There is no fault table for this machine.'),
        use: 'card',
      },
    ];
  },
});

function partRows(context: ViewContext, all: readonly CardLine[], part: CardPart): readonly Row[] {
  const { say } = context;
  const fitting = all.filter((line) => line.part === part);
  if (fitting.length === 0) return [];
  return [
    { kind: 'band', text: [{ kind: 'strong', text: sentence(say(part)) }] },
    ...fitting.flatMap((line, index) => [
      ...(isFirst(fitting, index) ? cautionRow(context, line.caution ?? '') : []),
      row(say(line.saw), sentence(say(line.means)), say(line.next)),
    ]),
  ];
}

/** A caution stands once in its part, at the first line that needs it. */
function isFirst(lines: readonly CardLine[], index: number): boolean {
  const caution = lines[index]?.caution;
  return caution !== undefined && lines.findIndex((line) => line.caution === caution) === index;
}
