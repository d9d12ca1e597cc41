// The order of work: what must be done before what, over all open jobs, then job by job; nothing here depends on who does it.
import { notOnText } from '../book/not-on-it.ts';
import { workOrder } from '../book/work-order.ts';
import type { JobInOrder, StepToDo } from '../book/work-order.ts';
import type { Block, Row, Text } from '../sheet/sheet.ts';
import { column, heading, joined, lines, row, sentence, stack } from './wording/blocks.ts';
import { withDates } from './wording/day.ts';
import { jobTitle } from './wording/job.ts';
import { ours } from './wording/ours.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const orderOfWork = defineView({
  id: 'order-of-work',
  purpose: 'What must come before what, over all open jobs and job by job.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say } = context;
    const { steps, jobs } = workOrder(context.book);
    const told = jobs.filter(({ first, after }) => first.length + after.length > 0);
    const free = jobs.filter((one) => !told.includes(one));
    return stack(
      heading(2, say('All open jobs'), 'all-open-jobs'),
      {
        type: 'table',
        columns: [
          column(say('Done'), 1, 'centre'),
          column(say('In this order'), 5),
          column(say('In the job'), 4),
          column(say('Because'), 6),
        ],
        rows: steps.map((one) => stepRow(context, one, 'order')),
        empty: say('No open job has a step that something must come before.'),
        use: 'work',
      },
      // The order of the only job there is stands above, step by step; what comes after it does not.
      jobs.length === 1 && told.every(({ after }) => after.length === 0) ? undefined : jobByJob(context, told),
      free.length === 0
        ? undefined
        : [
            heading(2, say('Nothing else must come before'), 'nothing-before'),
            lines(free.map(({ job }): Text => [jobTitle(job)])),
          ],
    );
  },
});

function jobByJob(context: ViewContext, told: readonly JobInOrder[]): readonly Block[] {
  if (told.length === 0) return [];
  return [heading(2, context.say('Job by job'), 'job-by-job'), jobTable(context, told, true)];
}

export const comesFirst = defineView({
  id: 'comes-first',
  purpose: 'What must come before this job and is not on record, and what must come after it.',
  needs: 'job',
  options: [],
  blocks: (context) => {
    const { book, job, say } = context;
    const found = workOrder(book).jobs.find((one) => one.job.id === job?.id);
    if (found === undefined || (found.first.length === 0 && found.after.length === 0)) return [];
    return stack(heading(2, say('First, and after it'), 'first'), jobTable(context, [found], false));
  },
});

/** Why the steps below wait for this one, each reason once. */
function because(context: ViewContext, { waiting, but, notOn }: StepToDo): Text {
  const whys = [...new Set(waiting.map(({ why, at }) => ours(context, at, why)))];
  const strong = [but, notOn === undefined ? undefined : withDates(context.say(notOnText(notOn)))];
  return joined([
    ...strong.map((text): Text | undefined => (text === undefined ? undefined : [{ kind: 'strong', text }])),
    whys.join('; '),
  ]);
}

function stepRow(context: ViewContext, one: StepToDo, id: string): Row {
  const jobs: Text =
    one.jobs.length === 0 ? context.say('in none of them') : joined(one.jobs.map((job): Text => [jobTitle(job)]));
  return row(
    { box: 'tick', id: `${id}/${one.step.id}` },
    ours(context, one.step.at, one.step.step),
    jobs,
    because(context, one),
  );
}

function bandOf({ job }: JobInOrder): Row {
  return { kind: 'band', text: [jobTitle(job)] };
}

/** What must come first with a tick each, then what must come after. */
function jobRows(context: ViewContext, { job, first, after }: JobInOrder): readonly Row[] {
  const { say } = context;
  const before = first.map((one) =>
    row(
      { box: 'tick', id: `first/${job.id}/${one.step.id}` },
      sentence(say('first')),
      ours(context, one.step.at, one.step.step),
      because(context, one),
    ),
  );
  const then = after.map(({ step, why }) =>
    row(
      { box: 'tick', id: `after/${job.id}/${step.id}` },
      sentence(say('after it')),
      ours(context, step.at, step.step),
      ours(context, step.at, why),
    ),
  );
  return [...before, ...then];
}

/** On a job’s own sheet its name stands above already. */
function jobTable(context: ViewContext, jobs: readonly JobInOrder[], named: boolean): Block {
  const { say } = context;
  return {
    type: 'table',
    columns: [
      column(say('Done'), 1, 'centre'),
      column(say('When'), 2),
      column(say('What'), 6),
      column(say('Because'), 6),
    ],
    rows: jobs.flatMap((one) => [...(named ? [bandOf(one)] : []), ...jobRows(context, one)]),
    empty: '',
    use: 'work',
  };
}
