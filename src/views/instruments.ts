// The measuring tools: what each measures, how finely, how truly, and when it was last checked.
import { printRange } from '../figure/print.ts';
import { formatDecimal } from '../quantity/decimal.ts';
import type { Instrument } from '../records/model.ts';
import type { Row } from '../sheet/sheet.ts';
import { column, heading, row } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { writtenText } from './wording/value.ts';
import { defineView } from './view.ts';

const hundred = 100;

export const instruments = defineView({
  id: 'instruments',
  purpose: 'Measuring tools with resolution, accuracy, range and last check.',
  needs: 'machine',
  options: [],
  blocks: ({ book, say }) => [
    heading(2, say('Instruments'), 'instruments'),
    {
      type: 'table',
      columns: ['Instrument', 'Measures', 'Reads to', 'True to', 'Range', 'Last checked'].map((head, index) =>
        column(say(head), index === 0 ? 5 : 3),
      ),
      rows: book.records.instruments.map((one) => instrumentRow(say, one)),
      empty: say('No instrument is recorded: no verdict can allow for its uncertainty.'),
      use: 'read',
    },
  ],
});

function instrumentRow(say: (words: string) => string, one: Instrument): Row {
  return row(
    one.name,
    one.measures === undefined ? '' : say(one.measures),
    one.resolution === undefined ? say('not known') : writtenText(one.resolution),
    accuracyText(one) ?? say('not known'),
    one.range === undefined ? '' : printRange(one.range),
    one.checked === undefined ? say('never, by the records') : dayText(one.checked),
  );
}

/** `0.01 mm`, `4 %`, or both: the larger of them counts, as the maker of the tool says it. */
function accuracyText({ accuracy }: Instrument): string | undefined {
  const absolute = accuracy?.absolute === undefined ? [] : [writtenText(accuracy.absolute)];
  const share = accuracy?.share === undefined ? [] : [`${formatDecimal(accuracy.share * hundred, 0)}\u00a0%`];
  const texts = [...absolute, ...share];
  return texts.length === 0 ? undefined : texts.join(', ');
}
