// The cover of the history: what it is, its state today in plain figures, and its best photos.
import type { Block } from '../sheet/sheet.ts';
import { photoBlock } from './job/photos.ts';
import { fact, heading, joined, paragraphs, stack } from './wording/blocks.ts';
import { count } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { distanceText, odometerStatement } from './wording/distance.ts';
import { gravestFindings } from './known-findings.ts';
import { whoseCopy } from './whose-copy.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const photosOnCover = 4;

export const historyCover = defineView({
  id: 'history-cover',
  purpose: 'The cover of the history: which machine, from when to when, and photos.',
  needs: 'machine',
  options: [],
  blocks: (context) =>
    stack(
      heading(1, context.book.records.machine.name, 'cover'),
      context.book.copy === 'buyer' ? whoseCopy(context) : undefined,
      facts(context),
      paragraphs(odometerStatement(context)),
      photos(context),
    ),
});

function facts({ book, say }: ViewContext): Block {
  const { jobs, machine } = book.records;
  const { now, statement } = book.odometer;
  const days = jobs
    .filter((job) => job.state !== 'planned')
    .map((job) => job.date.from)
    .toSorted();
  const [first] = days;
  const last = days.at(-1);
  return {
    type: 'facts',
    across: 2,
    facts: [
      ...fact(say('Make and model'), `${machine.make} ${machine.model}`),
      ...fact(say('Year'), machine.year),
      ...fact(say('Records'), count(days.length)),
      ...fact(
        say('First record'),
        first === undefined ? undefined : dayText(first),
        say('there is no record from before'),
      ),
      ...fact(say('Last record'), last === undefined ? undefined : dayText(last)),
      ...fact(
        say('Distance'),
        distanceText(say, now),
        now.machine !== undefined && statement.word === 'not actual' ? say('not actual, as said below') : undefined,
      ),
      ...fact(
        say('Open findings'),
        joined(
          gravestFindings(book, say).map(({ weight, saw }) => `${weight}: ${saw}`),
          '; ',
        ),
      ),
    ],
  };
}

/** The last photos of records that are not private, newest first: the machine as it is now. */
function photos({ book }: ViewContext): readonly Block[] {
  const open = book.photos.filter(({ photo }) => !photo.private);
  const newest = open.toSorted((one, other) => (one.job.date.from < other.job.date.from ? 1 : -1));
  return newest.slice(0, photosOnCover).map(({ job, photo }) => photoBlock(job, photo, 'half'));
}
