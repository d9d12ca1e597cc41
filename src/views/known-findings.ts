// Known faults and deferred jobs: every finding that no later work has answered.
import type { Row } from '../sheet/sheet.ts';
import type { Finding } from '../records/model.ts';
import { findingRow } from './job/findings.ts';
import { column, heading } from './wording/blocks.ts';
import { jobNamed } from './wording/job.ts';
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
  const open = book.records.jobs.flatMap((job) =>
    job.findings.filter((finding) => isOpen(finding)).map((finding) => ({ job, finding })),
  );
  return weights.flatMap((weight) =>
    open
      .filter(({ finding }) => finding.weight === weight)
      .map(({ job, finding }): Row => {
        const line = findingRow(book, say, finding);
        return line.kind === 'cells' ? { ...line, cells: [...line.cells, { text: jobNamed(job) }] } : line;
      }),
  );
}

/** Not answered by later work. */
export function isOpen(finding: Finding): boolean {
  return /^(open|deferred|not done)\b/.test(finding.became) || finding.became === '';
}
