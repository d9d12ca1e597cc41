// What is said of the distance at a handover: the three words, each instrument with what it read, and a box for the figure on the day.
import type { InstrumentPeriod } from '../records/model.ts';
import type { Block } from '../sheet/sheet.ts';
import { column, heading, paragraphs, row } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { spanText } from './wording/day.ts';
import { odometerStatement } from './wording/distance.ts';
import { writtenText } from './wording/value.ts';
import { defineView } from './view.ts';

export const odometerSaid = defineView({
  id: 'odometer-said',
  purpose: 'The odometer statement with every instrument, its unit, digits and readings.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => {
    const { book, say } = context;
    return [
      heading(2, say('The distance'), 'the-distance'),
      paragraphs(odometerStatement(context)),
      {
        type: 'table',
        columns: [
          column(say('Instrument'), 2),
          column(say('Unit, digits'), 2),
          column(say('From'), 4),
          column(say('To'), 4),
          column(say('State'), 2),
        ],
        rows: book.records.machine.clock.map((one, index) =>
          row(
            `${say('no.')} ${count(index + 1)}`,
            `${one.unit.symbol}, ${count(one.digits)}`,
            ended(say, one.from),
            one.to === undefined ? say('fitted now') : ended(say, one.to),
            say(one.state),
          ),
        ),
        empty: say('No instrument is recorded.'),
        use: 'read',
      },
    ];
  },
});

type End = InstrumentPeriod['from'];

function ended(say: (words: string) => string, end: End): string {
  const reads = end.reads === undefined ? say('reading not known') : writtenText(end.reads);
  const { day, whole } = end;
  return `${spanText({ from: day, to: day, ...(whole === undefined ? {} : { whole }) })}, ${reads}`;
}
