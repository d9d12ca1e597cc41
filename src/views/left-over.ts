// What lies on the bench and belongs somewhere: the places it may have come from, the likeliest first, with bag, date and photo.
import { asFound, leftOnBench, likelyPlaces } from '../book/left-over.ts';
import type { LikelyPlace } from '../book/left-over.ts';
import type { LeftOverThing } from '../records/model.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { photoBlock } from './job/photos.ts';
import { column, heading, joined, row, stack } from './wording/blocks.ts';
import { count, times } from './wording/count.ts';
import { dayText } from './wording/day.ts';
import { fastenerSize, threadText } from './wording/fastener.ts';
import { jobTitle } from './wording/job.ts';
import { writtenText } from './wording/value.ts';
import { workThing } from './wording/work.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** So many places are worth walking to. */
const mostPlaces = 5;

export const leftOver = defineView({
  id: 'left-over',
  purpose: 'What was left over on the bench, and the places it may belong to, the likeliest first.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { book, say } = context;
    const bench = leftOnBench(book);
    if (bench === undefined) return [];
    const found = bench.things.map((thing) => ({ thing, places: likelyPlaces(book, asFound(thing)) }));
    const note: Text = [`${say('On the bench since')} ${dayText(bench.job.date.to)}: `, jobTitle(bench.job)];
    return stack(
      heading(2, say('Left over'), 'left-over'),
      {
        type: 'table',
        columns: [
          column(say('Here'), 1, 'centre'),
          column(say('May belong to'), 5),
          column(say('Came off'), 5),
          column(say('Bag'), 1),
          column(say('Why'), 4),
        ],
        rows: [
          { kind: 'band', text: note },
          ...found.flatMap(({ thing, places }, index) =>
            rowsOf(context, thing, places, `left-over/${count(index + 1)}`),
          ),
        ],
        empty: '',
        use: 'work',
      },
      photoOf(found.flatMap(({ places }) => places[0] ?? [])),
    );
  },
});

/** `1 × M6 × 25 mm, washer`. */
function thingText({ name, thread, length, count }: LeftOverThing): string {
  const size = [
    thread === undefined ? undefined : threadText(thread),
    length === undefined ? undefined : writtenText(length),
  ];
  const words = [name, size.filter((one) => one !== undefined).join(' × ')].filter(
    (one) => one !== undefined && one !== '',
  );
  return count === undefined ? words.join(', ') : `${times(count)}\u00a0${words.join(', ')}`;
}

function rowsOf(
  context: ViewContext,
  thing: LeftOverThing,
  places: readonly LikelyPlace[],
  id: string,
): readonly Row[] {
  const { say } = context;
  const none = places.length === 0 ? `: ${say('no place on record it would fit')}` : '';
  const band: Row = { kind: 'band', text: [{ kind: 'strong', text: thingText(thing) }, none] };
  return [band, ...places.slice(0, mostPlaces).map((place) => placeRow(context, place, id))];
}

function placeRow({ book, say }: ViewContext, { fastener, line, because }: LikelyPlace, id: string): Row {
  const size = fastenerSize(fastener);
  const by = 'by' in line ? joined([say('back'), dayText(line.byJob.date.from)], ' ') : undefined;
  const off: Text = [`${workThing(book, line.entry)}, ${dayText(line.since)}, `, jobTitle(line.job)];
  return row(
    { box: 'tick', id: `${id}/${fastener.id}/${line.job.id}` },
    joined([[{ kind: 'strong', text: fastener.name }], size], ', '),
    joined([off, by]),
    line.entry.bag ?? '',
    because.map((word) => say(word)).join(', '),
  );
}

/** The first photo of the likeliest place, where its record has one. */
function photoOf(places: readonly LikelyPlace[]): Block | undefined {
  const job = places.map(({ line }) => line.job).find(({ photos }) => photos.length > 0);
  const photo = job?.photos[0];
  return job === undefined || photo === undefined ? undefined : photoBlock(job, photo, 'small');
}
