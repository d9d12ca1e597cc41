// The measuring sheet of a planned job: its blanks in their order, found and left, standard and limit, last reading beside them.
import { printRange } from '../figure/print.ts';
import type { Blank } from '../book/book.ts';
import type { BlankRow, Block } from '../sheet/sheet.ts';
import { stack } from './wording/blocks.ts';
import { expectedText } from './wording/expected.ts';
import { filled } from './wording/filled.ts';
import { instrumentName } from './wording/named.ts';
import { conditionText, valueText } from './wording/value.ts';
import { remarkAt } from './wording/written.ts';
import { lastReading } from './inspection.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const measuring = defineView({
  id: 'measuring',
  purpose: 'The blanks of a planned job: found and left, standard, limit, last reading.',
  needs: 'job',
  options: [],
  blocks: (context) => stack(blanks(context)),
});

function blanks(context: ViewContext): Block {
  const { plan, say } = context;
  return {
    type: 'blanks',
    items: (plan?.blanks ?? []).map((blank) => blankRow(context, blank)),
    empty: say('This job asks for no reading.'),
  };
}

function standardOf(blank: Blank): string | undefined {
  if (blank.limit?.standard !== undefined) return printRange(blank.limit.standard);
  return valueText(blank.setting?.value);
}

function limitOf(blank: Blank): string | undefined {
  const range = blank.limit?.limit ?? blank.setting?.range;
  return range === undefined ? undefined : printRange(range);
}

/** One row of the measuring table. */
export function blankRow(context: ViewContext, blank: Blank): BlankRow {
  const { book, say } = context;
  return {
    id: blank.id,
    item: blank.name,
    unit: blank.unit,
    ...filled('position', blank.position),
    ...filled('standard', standardOf(blank)),
    ...filled('limit', limitOf(blank)),
    ...filled('last', lastReading(blank.last, blank.limit?.condition ?? blank.setting?.condition ?? [])),
    ...filled('expected', expectedText(context, blank.item)),
    ...filled('found', valueText(blank.found) ?? remarkAt(context, `${blank.id}/found`)),
    ...filled('left', valueText(blank.left) ?? remarkAt(context, `${blank.id}/left`)),
    ...filled('verdict', blank.verdict === undefined ? undefined : say(blank.verdict)),
    ...filled('instrument', instrumentName(book, blank.limit?.instrument ?? blank.last?.instrument)),
    ...filled('condition', conditionText(blank.limit?.condition ?? blank.setting?.condition ?? [])),
  };
}
