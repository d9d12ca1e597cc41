// Findings that nobody answered.
import { daysBetween } from '../../quantity/day-arithmetic.ts';
import type { Day } from '../../quantity/day.ts';
import type { Job } from '../../records/model.ts';
import { keptFlat } from '../../records/runs.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** A season has come round: what is open so long was forgotten (our choice). */
const longest = 365;

/** Open for more than a year, with no day that it may wait until. */
export const findingNeverAnswered: Look = ({ ground }) => neverAnswered(ground.jobs, ground.today);

const neverAnswered = keptFlat((job: Job, today: Day) => {
  const open = job.findings.filter((finding) => finding.became === 'open' && finding.until === undefined);
  if (open.length === 0 || daysBetween(job.date.from, today) <= longest) return [];
  return open.map((finding) =>
    query(
      'finding-never-answered',
      finding.at,
      `${finding.saw}: seen ${job.date.from}, and nobody has written what became of it`,
      'write `became:`, or until when it may wait',
    ),
  );
});
