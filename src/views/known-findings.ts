// Known faults and deferred jobs: every finding that no later work has answered.
import type { Row } from '../sheet/sheet.ts';
import type { Book } from '../book/book.ts';
import type { Finding, Job } from '../records/model.ts';
import { findingRow } from './job/findings.ts';
import { column, heading } from './wording/blocks.ts';
import { jobNamed } from './wording/job.ts';
import type { Say } from './wording/work.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

/** Heaviest first. */
export const weights: readonly Finding['weight'][] = ['stops', 'limits', 'not done', 'note'];

export const knownFindings = defineView({
  id: 'known-findings',
  purpose: 'Findings and deferred jobs that are still open.',
  needs: 'machine',
  options: [],
  blocks: (context) => {
    const { say } = context;
    return [
      heading(2, say('Known faults and deferred jobs'), 'known-findings'),
      {
        type: 'table',
        columns: [
          column(say('Weight'), 2),
          column(say('Seen'), 6),
          column(say('What became of it'), 4),
          column(say('Record'), 5),
        ],
        rows: rows(context),
        empty: say('No finding is open, by the records.'),
        use: 'read',
      },
    ];
  },
});

function rows({ book, say }: ViewContext): readonly Row[] {
  return openFindings(book).map(({ job, finding }): Row => {
    const line = findingRow(book, say, finding);
    return line.kind === 'cells' ? { ...line, cells: [...line.cells, { text: jobNamed(job) }] } : line;
  });
}

/** What no later work has answered, heaviest first, then as the records go. */
export function openFindings(book: Book): readonly { readonly job: Job; readonly finding: Finding }[] {
  const open = book.records.jobs.flatMap((job) =>
    job.findings.filter((finding) => isOpen(finding)).map((finding) => ({ job, finding })),
  );
  return weights.flatMap((weight) => open.filter(({ finding }) => finding.weight === weight));
}

/** Open findings that stop the machine or limit what is done with it: `stops: crack at the headstock`. */
export function gravestFindings(book: Book, say: Say): readonly { readonly weight: string; readonly saw: string }[] {
  return openFindings(book).flatMap(({ finding }) =>
    finding.weight === 'stops' || finding.weight === 'limits'
      ? [{ weight: say(finding.weight), saw: finding.saw }]
      : [],
  );
}

/** Not answered by later work. */
export function isOpen(finding: Finding): boolean {
  return /^(open|deferred|not done)\b/.test(finding.became) || finding.became === '';
}
