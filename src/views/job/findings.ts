// What was seen on a job, how heavily it weighs, and what became of it.
import type { Book } from '../../book/book.ts';
import type { Finding, Job } from '../../records/model.ts';
import type { Block, Row, Text } from '../../sheet/sheet.ts';
import { column, heading, joined, row } from '../wording/blocks.ts';
import { dayText } from '../wording/day.ts';
import { withJobs } from '../wording/job.ts';
import type { ViewContext } from '../view.ts';

/** A table of the findings, or nothing. */
export function jobFindings({ book, say }: ViewContext, job: Job, within: string): readonly Block[] {
  if (job.findings.length === 0) return [];
  return [
    heading(3, say('Findings'), `${within}findings`),
    {
      type: 'table',
      columns: [column(say('Weight'), 2), column(say('Seen'), 7), column(say('What became of it'), 5)],
      rows: job.findings.map((finding) => findingRow(book, say, finding)),
      empty: '',
      use: 'read',
    },
  ];
}

/** One finding in a line: `both tyres cracked to the cords (stops): answered in …`. */
export function findingText({ book, say }: Pick<ViewContext, 'book' | 'say'>, finding: Finding): Text {
  const until = finding.until === undefined ? '' : ` ${say('until')} ${dayText(finding.until)}`;
  return joined([`${finding.saw} (${say(finding.weight)}${until})`, withJobs(book, finding.became)], ': ');
}

/** `stops`, `limits until …`, `not done`, `note`: what was seen, and what became of it. */
export function findingRow(book: Book, say: (words: string) => string, finding: Finding): Row {
  const until = finding.until === undefined ? undefined : `${say('until')} ${dayText(finding.until)}`;
  return row(joined([say(finding.weight), until], ' '), finding.saw, withJobs(book, finding.became));
}
