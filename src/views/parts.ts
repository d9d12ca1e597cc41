// Parts: what is wanted or on its way, by supplier; then what was fitted, with its numbers and where it came from.
import type { Book } from '../book/book.ts';
import { byText } from '../book/in-order.ts';
import type { Job, PartEntry } from '../records/model.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { partCells, partColumns, partRow } from './job/parts.ts';
import { column, heading, joined, row, stack } from './wording/blocks.ts';
import { capped, olderOnes } from './wording/capped.ts';
import { heldUntil } from './wording/held-until.ts';
import { jobTitle } from './wording/job.ts';
import { lostParts } from './wording/lost-parts.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

type Line = Book['parts'][number];

const toCome: ReadonlySet<PartEntry['state']> = new Set(['wanted', 'ordered', 'here']);

export const parts = defineView({
  id: 'parts',
  purpose: 'Parts wanted, ordered and here, by supplier; then parts fitted, moved and returned.',
  needs: 'machine',
  options: ['of'],
  blocks: (context) => {
    const { book, say, options } = context;
    const open = [...stillToCome(book.parts), ...lostParts(book)];
    const fitted = book.parts.filter(({ part }) => part.state === 'fitted' || part.state === 'returned');
    return stack(
      options['of'] === 'fitted'
        ? undefined
        : [heading(2, say('To get, or not fitted yet'), 'to-get'), toGet(context, open)],
      options['of'] === 'wanted' ? undefined : [heading(2, say('Fitted'), 'fitted'), table(context, fitted)],
    );
  },
});

/** A part that another record fits or sends back later is no longer to get. */
function stillToCome(all: readonly Line[]): readonly Line[] {
  if (!all.some((line) => toCome.has(line.part.state))) return [];
  const newest = new Map(all.map((line) => [line.part.part.toLowerCase(), line]));
  return all.filter((line) => toCome.has(line.part.state) && newest.get(line.part.part.toLowerCase()) === line);
}

/** What keeps a hold point held comes first, the earliest point before the others; then by supplier. */
function holdersFirst({ book }: ViewContext, open: readonly Line[]): readonly Line[] {
  const rank = ({ job }: Line): number => heldUntil(book, job)?.order ?? Number.MAX_SAFE_INTEGER;
  const bySupplier = open.toSorted((one, other) => byText(one.part.from ?? '', other.part.from ?? ''));
  return bySupplier.toSorted((one, other) => rank(one) - rank(other));
}

/** The job, and the first hold point that stays held until it is done. */
function forWhat(context: ViewContext, job: Job): Text {
  const point = heldUntil(context.book, job);
  const until = point === undefined ? undefined : `${context.say('holds')}: ${ours(context, point.at, point.title)}`;
  return joined([[jobTitle(job)], until]);
}

function toGet(context: ViewContext, open: readonly Line[]): Block {
  const { say } = context;
  const pressing = holdersFirst(context, open);
  const suppliers = [...new Set(pressing.map(({ part }) => part.from ?? ''))];
  const all = open.map(({ part }) => part);
  const rows = suppliers.flatMap((supplier): readonly Row[] => {
    const name = supplier === '' ? say('supplier not named') : supplier;
    const those = pressing.filter(({ part }) => (part.from ?? '') === supplier);
    return [
      { kind: 'band', text: [{ kind: 'strong', text: name }] },
      ...those.map(({ job, part }) => row({ box: 'tick' }, ...partCells(say, part, all), forWhat(context, job))),
    ];
  });
  return {
    type: 'table',
    columns: [column(say('Got'), 1, 'centre'), ...partColumns(say, all), column(say('For'), 4)],
    rows,
    empty: say('No part is wanted.'),
    use: 'work',
  };
}

function table({ say }: ViewContext, lines: readonly Line[]): Block {
  const all = lines.map(({ part }) => part);
  return {
    type: 'table',
    columns: [...partColumns(say, all), column(say('Record'), 4)],
    rows: capped(lines.toReversed(), (rest) => olderOnes(say, rest)).map((one) =>
      'kind' in one ? one : partRow(say, one.part, all, [jobTitle(one.job)]),
    ),
    empty: say('No part is recorded as fitted.'),
    use: 'read',
  };
}
