// The parts of a record: number in the book and as bought, class, from where, price, state.
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { Job, PartEntry } from '../../records/model.ts';
import type { Block, Cell, Row, Text } from '../../sheet/sheet.ts';
import { column, heading, joined, row } from '../wording/blocks.ts';
import { times } from '../wording/count.ts';
import { insteadText } from '../wording/original-kept.ts';
import type { ViewContext } from '../view.ts';

/** A table of the parts, or nothing. */
export function jobParts(context: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.parts.length === 0) return [];
  const { say } = context;
  return [
    heading(3, say('Parts'), `${within}parts`),
    {
      type: 'table',
      columns: partColumns(say, job.parts),
      rows: job.parts.map((part) => row(...partCells(say, part, job.parts))),
      empty: '',
      use: 'read',
    },
  ];
}

/** The columns of a table of parts; state only where not all are alike. */
export function partColumns(
  say: (words: string) => string,
  parts: readonly PartEntry[],
): readonly ReturnType<typeof column>[] {
  return [
    column(say('Part, number'), 6),
    column(say('Class, from'), 4),
    column(say('Price'), 2, 'right'),
    ...(allAlike(parts) ? [] : [column(say('State'), 3)]),
  ];
}

const alike = new WeakMap<readonly PartEntry[], boolean>();

/** All fitted, none moved: the heading above says it. Asked again for every row of a table, and looked through once. */
function allAlike(parts: readonly PartEntry[]): boolean {
  const known = alike.get(parts);
  if (known !== undefined) return known;
  const all = parts.every(
    (part) => part.state === 'fitted' && part.movedFrom === undefined && part.movedTo === undefined,
  );
  alike.set(parts, all);
  return all;
}

/** The number as bought, and the number in the book where it is another. */
function numbers(say: (words: string) => string, part: PartEntry): Text {
  const { number, bookNumber } = part;
  const book = bookNumber === undefined || bookNumber === number ? undefined : `${say('in the book')} ${bookNumber}`;
  return joined([number, book], ', ');
}

/** The cells of one part, in the order of the columns. */
export function partCells(
  say: (words: string) => string,
  part: PartEntry,
  parts: readonly PartEntry[],
): readonly (Text | Cell)[] {
  const name = part.count === 1 ? part.part : `${times(part.count)}\u00a0${part.part}`;
  return [
    joined([name, numbers(say, part), insteadText(say, part), part.note]),
    joined([part.class === undefined ? undefined : say(part.class), part.from], ', '),
    part.price === undefined ? '' : formatMoney(part.price),
    ...(allAlike(parts) ? [] : [joined([say(part.state), ...moved(say, part)], ', ')]),
  ];
}

function moved(say: (words: string) => string, part: PartEntry): readonly (string | undefined)[] {
  return [
    part.movedFrom === undefined ? undefined : `${say('moved from')} ${part.movedFrom}`,
    part.movedTo === undefined ? undefined : `${say('moved to')} ${part.movedTo}`,
    part.worth === undefined ? undefined : `${say('set at')} ${formatMoney(part.worth)}`,
  ];
}

/** A row of a part with one cell more. */
export function partRow(
  say: (words: string) => string,
  part: PartEntry,
  parts: readonly PartEntry[],
  last: Text | Cell,
): Row {
  return row(...partCells(say, part, parts), last);
}
