// Parts that were fitted or sent back, with their numbers and where they came from, newest first.
import { numbersText, superseded } from '../book/shopping/numbers.ts';
import type { Book } from '../book/book.ts';
import type { Block } from '../sheet/sheet.ts';
import { partColumns, partRow } from './job/parts.ts';
import { column, heading, lines, stack } from './wording/blocks.ts';
import { capped, olderOnes } from './wording/capped.ts';
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
  blocks: (context) => {
    const fitted = context.book.parts.filter(({ part }) => part.state === 'fitted' || part.state === 'returned');
    return stack(heading(2, context.say('Fitted'), 'fitted'), table(context, fitted), numbers(context));
  },
});

function table({ say, rows }: ViewContext, fitted: readonly Line[]): Block {
  const all = fitted.map(({ part }) => part);
  return {
    type: 'table',
    columns: [...partColumns(say, all), column(say('Record'), 4)],
    rows: capped(fitted.toReversed(), (rest) => olderOnes(say, rest), rows).map((one) =>
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
