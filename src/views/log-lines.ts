// Records a line each, year by year: to find one among many, and to leaf through those of one system or one kind of work.
import type { Job } from '../records/model.ts';
import type { Block, Paragraph, Text } from '../sheet/sheet.ts';
import { heading } from './wording/blocks.ts';
import { grouped } from './wording/grouped.ts';
import { spanText, yearOf } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import type { ViewContext } from './view.ts';

/** Lists under their years, in the order given; `ofOneKind` where the page says already which kind of work it is. */
export function logLines(context: ViewContext, jobs: readonly Job[], ofOneKind: boolean): readonly Block[] {
  const years = grouped(jobs, (job) => yearOf(job.date.from));
  return [...years].flatMap(([year, those]): readonly Block[] => [
    heading(2, year, `year-${year}`),
    {
      type: 'prose',
      paragraphs: [{ kind: 'list', ordered: false, items: those.map((job) => item(context, job, ofOneKind)) }],
    },
  ]);
}

function item({ say }: ViewContext, job: Job, ofOneKind: boolean): readonly Paragraph[] {
  const kind = ofOneKind ? '' : `, ${say(job.kind)}`;
  const [day, title] = [`${spanText(job.date)}  `, jobTitle(job)];
  const text: Text =
    job.state === 'done' ? [day, title, kind] : [day, title, `${kind}, `, { kind: 'strong', text: say(job.state) }];
  return [{ kind: 'paragraph', text }];
}
