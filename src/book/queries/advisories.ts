// Findings that nobody answered.
import { daysBetween } from '../../quantity/day-arithmetic.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** A season has come round: what is open so long was forgotten (our choice). */
const longest = 365;

/** Open for more than a year, with no day that it may wait until. */
export const findingNeverAnswered: Look = ({ ground }) =>
  ground.jobs
    .filter((job) => daysBetween(job.date.from, ground.today) > longest)
    .flatMap((job) =>
      job.findings
        .filter((finding) => finding.became === 'open' && finding.until === undefined)
        .map((finding) =>
          query(
            'finding-never-answered',
            finding.at,
            `${finding.saw}: seen ${job.date.from}, and nobody has written what became of it`,
            'write `became:`, or until when it may wait',
          ),
        ),
    );
