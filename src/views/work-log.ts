// The work log of the history: every record told whole, in the order of the dates.
import type { Block } from '../sheet/sheet.ts';
import { heading } from './wording/blocks.ts';
import { spanText } from './wording/day.ts';
import { tellInBrief } from './job/brief.ts';
import { newestFirst } from './log.ts';
import { defineView } from './view.ts';

export const workLog = defineView({
  id: 'work-log',
  purpose: 'Every record told whole, oldest first.',
  needs: 'machine',
  options: [],
  long: { page: 'log.html', title: 'Log' },
  blocks: (context) => {
    const jobs = newestFirst(context.book.records.jobs).toReversed();
    return jobs.flatMap((job): readonly Block[] => [
      { ...heading(2, `${spanText(job.date)}: ${job.title}`, `job-${job.id}`), whole: true },
      ...tellInBrief(context, job),
    ]);
  },
});
