// Parts that were fitted or sent back, with their numbers and where they came from, newest first.
import { numbersText, superseded } from '../book/shopping/numbers.ts';
import type { Book } from '../book/book.ts';
import type { Block } from '../sheet/sheet.ts';
import { partColumns, partRow } from './job/parts.ts';
import { column, heading, lines, stack } from './wording/blocks.ts';
import { capped, olderByYear, olderOnes } from './wording/capped.ts';
import { yearOf } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

type Line = Book['parts'][number];

export const parts = defineView({
  id: 'parts',
  purpose: 'Parts fitted, moved and returned; numbers that were superseded, both ways.',
  needs: 'machine',
  options: [],
  long: { page: 'parts.html', title: 'Parts' },
  blocks: (context) =>
    stack(heading(2, context.say('Fitted'), 'fitted'), fittedTable(context, fittedParts(context)), numbers(context)),
});

/** Parts that were fitted or sent back, newest first. */
export function fittedParts({ book }: ViewContext): readonly Line[] {
  return book.parts.filter(({ part }) => part.state === 'fitted' || part.state === 'returned').toReversed();
}

/** The table of these parts; where a page shows only so many rows, its years lead to the others. */
export function fittedTable({ say, rows }: ViewContext, fitted: readonly Line[]): Block {
  const all = fitted.map(({ part }) => part);
  const years = fitted.map(({ job }) => yearOf(job.date.from));
  const telling = rows === undefined ? (rest: number) => olderOnes(say, rest) : olderByYear(say, 'parts', years);
  return {
    type: 'table',
    columns: [...partColumns(say, all), column(say('Record'), 4)],
    rows: capped(fitted, telling, rows).map((one) =>
      'kind' in one ? one : partRow(say, one.part, all, [jobTitle(one.job)]),
    ),
    empty: say('No part is recorded as fitted.'),
    use: 'read',
  };
}

/** Each part whose number was superseded, or took the place of another, once. */
function numbers({ book, say }: ViewContext): readonly Block[] {
  const all = book.parts.map(({ part }) => part);
  const of = superseded(all);
  const told = all.flatMap((part) => {
    const own = [part.number, part.bookNumber].filter((one) => one !== undefined);
    const known = own.some((one) => of(one).newer.length + of(one).older.length > 0);
    return known ? [`${part.part}: ${numbersText(part, of)}`] : [];
  });
  if (told.length === 0) return [];
  return [heading(2, say('Superseded numbers'), 'superseded-numbers'), lines([...new Set(told)])];
}
