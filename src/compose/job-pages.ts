// A page for each record, with the record before and after it by date.
import type { Job } from '../records/model.ts';
import { tellJob } from '../views/job-story.ts';
import { newestFirst } from '../views/log.ts';
import type { ViewContext } from '../views/view.ts';
import type { PageSpec } from './pages.ts';

type Beside = { readonly file: string; readonly title: string };

/** Pages of the records, oldest first. */
export function jobPages(context: ViewContext): readonly PageSpec[] {
  const section = context.say('Log');
  const jobs = newestFirst(context.book.records.jobs).toReversed();
  const plans = new Map(context.book.plans.map((plan) => [plan.job, plan]));
  return jobs.map((job, index): PageSpec => {
    const { file, title } = nameOf(job);
    const before = jobs[index - 1];
    const after = jobs[index + 1];
    return {
      file,
      title,
      section,
      make: () => {
        const plan = plans.get(job);
        const forJob = plan === undefined ? { ...context, job } : { ...context, job, plan };
        return {
          file,
          title,
          section,
          blocks: tellJob(forJob, job, ''),
          ...(before === undefined ? {} : { previous: nameOf(before) }),
          ...(after === undefined ? {} : { next: nameOf(after) }),
        };
      },
    };
  });
}

function nameOf(job: Job): Beside {
  return { file: `jobs/${job.id}.html`, title: job.title };
}
