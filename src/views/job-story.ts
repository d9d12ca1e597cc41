// One record's whole story: its facts, the owner's own words and photos, then the work line by line, readings, parts, findings and money.
import type { Block } from '../sheet/sheet.ts';
import { lines, stack } from './wording/blocks.ts';
import { sheetsOf } from './wording/sheet-names.ts';
import { jobChecks, jobFacts } from './job/facts.ts';
import { jobFindings } from './job/findings.ts';
import { jobLeft } from './job/left.ts';
import { jobMoney } from './job/money.ts';
import { jobParts } from './job/parts.ts';
import { jobPhotos } from './job/photos.ts';
import { jobReadings } from './job/readings.ts';
import { jobRemarks } from './job/remarks.ts';
import { jobRun } from './job/run.ts';
import { jobWork } from './job/work.ts';
import { sheetsFor } from './next-sheets.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const jobStory = defineView({
  id: 'job-story',
  purpose: 'Everything that one record says.',
  needs: 'job',
  options: [],
  blocks: (context) => (context.job === undefined ? [] : tellJob(context, context.job, '')),
});

/** The blocks of one record. `within` keeps anchors apart where several records stand on one sheet. */
export function tellJob(context: ViewContext, job: NonNullable<ViewContext['job']>, within: string): readonly Block[] {
  return stack(
    jobFacts(context, job),
    planned(context),
    words(context, job),
    jobPhotos(job, 'half'),
    jobWork(context, job, within),
    jobLeft(context, job, within),
    jobChecks(context, job, within),
    jobReadings(context, job, within),
    jobParts(context, job, within),
    jobFindings(context, job, within),
    jobRemarks(context, job, within),
    jobRun(context, job, within),
    jobMoney(context, job, within),
  );
}

/** A planned job leads to its sheets, in the order in which they are worked down. */
function planned({ book, plan, say }: ViewContext): readonly Block[] {
  if (plan === undefined) return [];
  const sheets = sheetsFor(
    plan,
    sheetsOf(book).filter(({ definition }) => definition.on.includes('screen')),
  );
  const links = sheets.map(
    ({ id, definition }) => ({ kind: 'link', text: say(definition.title), to: `sheet:${id}` }) as const,
  );
  const phone = { kind: 'link', text: say('All of it to fill in on a telephone'), to: `phone:${plan.job.id}` } as const;
  return [lines([...links, ...(links.length === 0 ? [] : [phone])].map((link) => [link]))];
}

function words(context: ViewContext, job: NonNullable<ViewContext['job']>): readonly Block[] {
  const paragraphs = context.prose(job.body);
  return paragraphs.length === 0 ? [] : [{ type: 'prose', paragraphs }];
}
