// What a machine sold in pieces consists of: tub by tub and bag by bag, what is with a firm, what came and was not fitted, what is missing.
import type { OpenLine } from '../book/book.ts';
import { byBag } from '../book/bags.ts';
import { partLines } from '../book/shopping/part-lines.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, lines, paragraphs, row, stack } from './wording/blocks.ts';
import { dayText } from './wording/day.ts';
import { times } from './wording/count.ts';
import { jobTitle } from './wording/job.ts';
import { isKept, keptWhere } from './wording/original-kept.ts';
import { workParticulars, workThing } from './wording/work.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const partsAndTubs = defineView({
  id: 'parts-and-tubs',
  purpose:
    'What is off, by the tub, bag or place it lies in; what is away, here and not fitted, and known to be missing.',
  needs: 'machine',
  options: [],
  blocks: (context) =>
    stack(said(context), places(context), away(context), here(context), kept(context), missing(context)),
});

function said({ say }: ViewContext): readonly Block[] {
  return [
    heading(2, say('Parts, by where they lie'), 'parts-by-place'),
    paragraphs(
      say(
        'Counted out together. What stands here is on record; it is no promise that nothing else is missing, nor that the parts are good.',
      ),
    ),
  ];
}

/** Lost things are in no place, and things that were sent out are with somebody. */
function isHere(line: OpenLine): boolean {
  return (line.state === 'off' || line.state === 'temporary') && line.entry.verb !== 'lost';
}

function placeOf({ entry }: OpenLine, say: ViewContext['say']): string {
  if (entry.bag !== undefined) return /^\d/u.test(entry.bag) ? `${say('Bag')} ${entry.bag}` : entry.bag;
  return entry.where ?? say('where it lies is not recorded');
}

function places(context: ViewContext): Block {
  const { book, say } = context;
  const away = new Set(book.off.open.filter(({ state }) => state === 'sent out').map(({ entry }) => entry.thing));
  const inPlaces = new Map<string, OpenLine[]>();
  for (const line of book.off.open) {
    if (!isHere(line) || away.has(line.entry.thing)) continue;
    const place = placeOf(line, say);
    inPlaces.set(place, [...(inPlaces.get(place) ?? []), line]);
  }
  const rows = [...inPlaces.keys()]
    .toSorted(byBag)
    .flatMap((place): readonly Row[] => [
      { kind: 'band', text: [{ kind: 'strong', text: place }] },
      ...(inPlaces.get(place) ?? []).map((line) => placeRow(context, line)),
    ]);
  return {
    type: 'table',
    columns: [
      column(say('There'), 1, 'centre'),
      column(say('What'), 4),
      column(say('Particulars'), 5),
      column(say('Since'), 3),
      column(say('Record'), 4),
    ],
    rows,
    empty: say('Nothing is off, by the records.'),
    use: 'work',
  };
}

function placeRow({ book, say }: ViewContext, line: OpenLine): Row {
  const { bag: _bag, where: _where, price: _price, ...rest } = line.entry;
  return row(
    { box: 'tick', id: `there/${line.job.id}/${line.entry.verb}/${line.entry.thing}` },
    workThing(book, line.entry),
    workParticulars(book, say, rest),
    dayText(line.since),
    [jobTitle(line.job)],
  );
}

function away(context: ViewContext): readonly Block[] {
  const { book, say } = context;
  const sent = book.off.open.filter(({ state }) => state === 'sent out');
  if (sent.length === 0) return [];
  return [
    heading(2, say('With somebody else'), 'with-somebody-else'),
    {
      type: 'table',
      columns: [
        column(say('What'), 4),
        column(say('With whom, promised, price'), 5),
        column(say('Since'), 3),
        column(say('Paid, agreed who pays'), 4),
      ],
      rows: sent.map((line) =>
        row(workThing(book, line.entry), workParticulars(book, say, line.entry), dayText(line.since), { box: 'line' }),
      ),
      empty: '',
      use: 'work',
    },
  ];
}

function here({ book, say }: ViewContext): readonly Block[] {
  const rows = partLines(book)
    .filter(({ part }) => part.state === 'here' || part.state === 'ordered')
    .map(({ part, count: many }) =>
      row(
        { box: 'tick' },
        many > 1 ? `${times(many)}\u00a0${part.part}` : part.part,
        part.number ?? part.bookNumber ?? '',
        say(part.state === 'here' ? 'here, not fitted' : 'ordered, not here'),
        part.from ?? '',
      ),
    );
  if (rows.length === 0) return [];
  return [
    heading(2, say('Bought for it'), 'bought-for-it'),
    {
      type: 'table',
      columns: [
        column(say('There'), 1, 'centre'),
        column(say('Part'), 5),
        column(say('Number'), 3),
        column(say('State'), 3),
        column(say('From'), 4),
      ],
      rows,
      empty: '',
      use: 'work',
    },
  ];
}

/** What came off for good and was kept all the same: it goes with the machine. */
function kept({ book, say }: ViewContext): readonly Block[] {
  const rows = book.parts
    .filter(({ part }) => part.state === 'fitted' && part.movedTo === undefined && isKept(part))
    .map(({ part, job }) =>
      row(
        { box: 'tick', id: `kept/${job.id}/${part.part}` },
        part.insteadOf ?? `${say('the one before')} ${part.part}`,
        keptWhere(say, part) ?? '',
        part.part,
        [jobTitle(job)],
      ),
    );
  if (rows.length === 0) return [];
  return [
    heading(2, say('Originals that were kept'), 'originals-kept'),
    {
      type: 'table',
      columns: [
        column(say('There'), 1, 'centre'),
        column(say('What'), 4),
        column(say('Kept'), 5),
        column(say('Fitted instead'), 3),
        column(say('Record'), 4),
      ],
      rows,
      empty: '',
      use: 'work',
    },
  ];
}

function missing({ book, say }: ViewContext): readonly Block[] {
  const lost = book.off.open
    .filter(({ entry }) => entry.verb === 'lost')
    .map((line) => `${say('lost')}: ${workThing(book, line.entry)}, ${dayText(line.since)}`);
  const wanted = partLines(book)
    .filter(({ part }) => part.state === 'wanted')
    .map(({ part }) => `${say('wanted')}: ${part.part}`);
  return [
    heading(2, say('Known to be missing'), 'known-to-be-missing'),
    lost.length + wanted.length === 0
      ? lines([say('Nothing is recorded as lost or wanted. Nobody has counted what was never written down.')])
      : lines([...lost, ...wanted]),
    {
      type: 'grid',
      caption: say('Found missing by both on the day'),
      columns: [column(say('What'), 7), column(say('Agreed'), 5)],
      rows: 2,
    },
  ];
}
