// Papers and ownership: what was done on paper, and the chain of owners as dates and places, never as names.
import type { Block } from '../sheet/sheet.ts';
import { column, fact, heading, row, stack } from './wording/blocks.ts';
import { dayText, looseDateText, spanText } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { newestFirst } from './log.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

const kinds = new Set(['buying', 'paperwork', 'handover']);

export const papers = defineView({
  id: 'papers',
  purpose: 'Papers in the records, and the chain of owners without names.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(list(context), owners(context)),
});

function list({ book, say }: ViewContext): readonly Block[] {
  const jobs = newestFirst(book.records.jobs.filter((job) => kinds.has(job.kind))).toReversed();
  return [
    heading(2, say('Papers'), 'papers'),
    {
      type: 'table',
      columns: [
        column(say('Date'), 3),
        column(say('Record'), 6),
        column(say('For'), 6),
        column(say('Goes with it'), 2, 'centre'),
      ],
      rows: jobs.map((job) => row(spanText(job.date), [jobTitle(job)], job.purpose ?? '', { box: 'tick' })),
      empty: say('No record is about papers.'),
      use: 'work',
    },
  ];
}

function owners({ book, say }: ViewContext): readonly Block[] {
  const bought = book.records.jobs.find((job) => job.kind === 'buying');
  const { adopted } = book.records;
  const takenOver = adopted === undefined ? undefined : dayText(adopted.date);
  return [
    heading(2, say('Owners, as dates and places'), 'owners'),
    {
      type: 'facts',
      facts: [
        ...fact(say('First used'), looseDateText(book.records.machine.firstUse ?? say('not known'))),
        ...fact(
          say('With the keeper of these records since'),
          bought === undefined ? say('not recorded') : spanText(bought.date),
        ),
        // Who adopted it is another keeper than the one who bought it on the records.
        ...fact(say('Taken over with these records on'), takenOver),
      ],
    },
    {
      type: 'grid',
      caption: say('Write dates and places. Names of living people and addresses stay out.'),
      columns: [
        column(say('From'), 2),
        column(say('To'), 2),
        column(say('Place'), 4),
        column(say('How it is known'), 5),
      ],
      rows: 4,
    },
  ];
}
