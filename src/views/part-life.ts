// The life of one part: what was done to it, what was measured on it, what was fitted, by date; then its photos.
import { photosOf, type LifeLine, type PartLife } from '../book/part-lives.ts';
import type { Job, PartEntry, Reading } from '../records/model.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { thumbnail } from './photographs.ts';
import { column, fact, filledOnly, heading, joined, row, sentence, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { jobDate, jobTitle } from './wording/job.ts';
import { itemName } from './wording/named.ts';
import { insteadText } from './wording/original-kept.ts';
import { seriesIndex } from './wording/series-index.ts';
import { valueText, writtenText } from './wording/value.ts';
import { verdictsText } from './wording/verdicts.ts';
import { workParticulars, workThing } from './wording/work.ts';
import type { ViewContext } from './view.ts';

/** So many lines of a life are told on its page. */
const mostLines = 150;

/** What a part is called. */
export function lifeName({ book }: ViewContext, life: PartLife): string {
  return sentence(itemName(book, life.name));
}

/** The blocks of one life, oldest line first; of a long one the newest. */
export function partLifeBlocks(context: ViewContext, life: PartLife): readonly Block[] {
  const { say } = context;
  const shown = life.lines.slice(-mostLines);
  const photos = photosOf(life);
  return stack(
    { type: 'facts', facts: facts(context, life) },
    filledOnly({
      type: 'table',
      columns: [
        column(say('Date'), 3),
        column(say('What'), 3),
        column(say('Particulars'), 8),
        column(say('On the clock'), 2, 'right'),
      ],
      rows: rowsOf(context, life, shown),
      empty: '',
      use: 'read',
    }),
    photos.length === 0 ? undefined : heading(2, say('Photos'), 'photos'),
    photos.map(({ job, photo }) => thumbnail(job, photo)),
  );
}

function facts(context: ViewContext, life: PartLife): Extract<Block, { type: 'facts' }>['facts'] {
  const { say } = context;
  const last = life.lines.at(-1);
  const before = life.lines.length - mostLines;
  return [
    ...fact(say('System'), say(life.system.name)),
    ...fact(say('Now'), stateNow(context, life)),
    ...fact(say('Touched last'), last === undefined ? undefined : [jobDate(last.job), ', ', jobTitle(last.job)]),
    ...fact(say('Before these lines'), before > 0 ? `${count(before)} ${say('more, in their records')}` : undefined),
  ];
}

/** What is open on it now, or that nothing is. */
export function stateNow({ book, say }: ViewContext, { open }: PartLife): Text {
  if (open.length === 0) return say('nothing open, by the records');
  return joined(
    open.map(({ state, entry, since }): Text => {
      const bag = entry.bag === undefined ? '' : `, ${say('bag')} ${entry.bag}`;
      return [
        { kind: 'strong', text: say(state) },
        `${bag}, ${say('since')} ${dayText(since)}: ${workThing(book, entry)}`,
      ];
    }),
  );
}

/** The lines of one record follow each other under its date. */
function rowsOf(context: ViewContext, life: PartLife, lines: readonly LifeLine[]): readonly Row[] {
  let before: Job | undefined;
  return lines.map((line) => {
    const { job } = line;
    const isFirst = job !== before;
    before = job;
    const clock = isFirst && job.odometer !== undefined ? writtenText(job.odometer) : '';
    const [what, particulars] = told(context, life, line);
    return row(isFirst ? [jobDate(job)] : '', what, particulars, clock);
  });
}

function told(context: ViewContext, life: PartLife, line: LifeLine): readonly [Text, Text] {
  const { book, say } = context;
  if (line.kind === 'reading') return [say('measured'), readingText(context, line.job, line.reading)];
  if (line.kind === 'part') return [say(line.part.state), partText(context, line.part)];
  const thing = workThing(book, line.entry);
  const isItself = thing.toLowerCase() === lifeName(context, life).toLowerCase();
  return [say(line.entry.verb), joined([isItself ? undefined : thing, workParticulars(book, say, line.entry)])];
}

/** The part as it was bought: number, class, where from, and where it went. */
function partText({ say }: ViewContext, part: PartEntry): Text {
  const from = [part.class === undefined ? undefined : say(part.class), part.from];
  return joined([
    part.part,
    part.number ?? part.bookNumber,
    joined(from, ', '),
    insteadText(say, part),
    part.movedFrom === undefined ? undefined : `${say('moved from')} ${part.movedFrom}`,
    part.movedTo === undefined ? undefined : `${say('moved to')} ${part.movedTo}`,
    part.note,
  ]);
}

/** So many positions are read out; of more it is said how many, and the series has them. */
const mostPositions = 3;

function readingText({ book, say }: ViewContext, job: Job, { item, found, left }: Reading): Text {
  const points = seriesIndex(book).ofRecord(job, item);
  const sides = [
    [say('as found'), found],
    [say('as left'), left],
  ] as const;
  const values = sides.flatMap(([side, those]) => {
    if (those.length === 0) return [];
    if (those.length > mostPositions) return [`${side}, ${say('at')} ${count(those.length)} ${say('places')}`];
    return [
      `${side}: ${those.map(({ position, value }) => [position, valueText(value) ?? say('not read')].filter(Boolean).join(' ')).join(', ')}`,
    ];
  });
  return joined([`${itemName(book, item)}: ${values.join('; ')}`, verdictsText(say, points)]);
}
