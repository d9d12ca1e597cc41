// Originality: what stands in place of what left the works and where that is kept, by the records; nothing is claimed of what they do not name.
import type { Book, TorqueRow } from '../book/book.ts';
import { plainName } from '../book/names.ts';
import type { PartEntry } from '../records/model.ts';
import type { Block, Row } from '../sheet/sheet.ts';
import { column, heading, joined, paragraphs, row } from './wording/blocks.ts';
import { capped, olderOnes } from './wording/capped.ts';
import { times } from './wording/count.ts';
import { jobNamed } from './wording/job.ts';
import { keptWhere } from './wording/original-kept.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const originality = defineView({
  id: 'originality',
  purpose: 'Part by part: as it left the works, now, since when, and where the original is kept, or room to write it.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => {
    const { book, say, rows } = context;
    return [
      heading(2, say('Originality'), 'originality'),
      paragraphs(
        say(
          'What the records name. Of what they do not name nothing is claimed, neither that it is original nor that it is not.',
        ),
      ),
      {
        type: 'table',
        columns: [
          column(say('Part'), 4),
          column(say('As it left the works'), 3),
          column(say('Now'), 4),
          column(say('Since'), 4),
          column(say('Original kept'), 3),
        ],
        rows: [
          ...capped(fitted(book).toReversed(), (rest) => olderOnes(say, rest), rows ?? book.parts.length)
            .map((one) => ('kind' in one ? one : partRow(context, one)))
            .toReversed(),
          ...book.torque.flatMap((one) => changedRow(context, one)),
        ],
        empty: say('No part is recorded as fitted, and no thread as changed.'),
        use: 'read',
      },
    ];
  },
});

type Line = Book['parts'][number];

/** What is poured in is used up, and leaves no original behind. */
function isFluid({ records }: Book, name: string): boolean {
  const plain = plainName(name);
  return records.maker.fluids.some((fluid) => plainName(fluid.id) === plain || plainName(fluid.name) === plain);
}

/** Parts that are on the machine and are not said to be the ones that it left the works with. */
function fitted(book: Book): readonly Line[] {
  return book.parts.filter(
    ({ part }) =>
      part.state === 'fitted' && part.class !== 'original' && part.movedTo === undefined && !isFluid(book, part.part),
  );
}

function partRow({ say }: ViewContext, { part, job }: Line): Row {
  const name = part.count === 1 ? part.part : `${times(part.count)}\u00a0${part.part}`;
  return row(name, part.insteadOf ?? '', nowText(say, part), jobNamed(job), keptWhere(say, part) ?? '');
}

function nowText(say: ViewContext['say'], part: PartEntry): ReturnType<typeof joined> {
  return joined([part.class === undefined ? say('class not recorded') : say(part.class), part.number], ', ');
}

/** A thread that was repaired to another one. */
function changedRow({ say }: ViewContext, { fastener, changed }: TorqueRow): readonly Row[] {
  if (changed === undefined) return [];
  return [
    row(fastener.name, fastener.thread ?? '', `${say('thread')}: ${changed.now}`, jobNamed(changed.by), {
      box: 'line',
    }),
  ];
}
