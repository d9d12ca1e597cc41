// Dates inside one record, or inside one instrument period, that run backwards: an end before its beginning.
import type { Place, Problem } from '../problem/problem.ts';
import type { Day } from '../quantity/day.ts';
import type { InstrumentPeriod, Job, Records } from './model.ts';
import { below } from './reference.ts';
import { keptFlat } from './runs.ts';

/** Something promised, allowed or released until a day before the record that says so; a clock that came off before it went on. */
export function checkDates({ machine, jobs }: Records): readonly Problem[] {
  return [...machine.clock.flatMap(ofPeriod), ...ofJobs(jobs)];
}

function ofPeriod({ id, from, to, at }: InstrumentPeriod): readonly Problem[] {
  if (to === undefined || to.day >= from.day) return [];
  const message = `Clock “${id}” came off on ${to.day}, before it went on on ${from.day}.`;
  return [outOfOrder(below(at, 'to', 'date'), message, below(at, 'from', 'date'))];
}

const ofJobs = keptFlat(outOfOrderIn);

function outOfOrderIn(job: Job): readonly Problem[] {
  const began = { file: job.file, path: ['date'] };
  const early = (day: Day | undefined, at: Place, what: string, ...keys: readonly string[]): readonly Problem[] =>
    day === undefined || day >= job.date.from
      ? []
      : [outOfOrder(below(at, ...keys), `${what} ${day}, before this record began on ${job.date.from}.`, began)];
  return [
    ...job.work.flatMap((entry) => early(entry.promised, entry.at, 'Promised for', 'promised')),
    ...job.parts.flatMap((part) => early(part.promised, part.at, 'Promised for', 'promised')),
    ...job.parts.flatMap((part) => early(part.core?.returnBy, part.at, 'To go back by', 'core', 'return by')),
    ...job.findings.flatMap((finding) => early(finding.until, finding.at, 'May wait until', 'until')),
    ...(job.releases ?? []).flatMap((release) => early(release.until, release.at, 'Released until', 'until')),
    ...minutes(job),
  ];
}

/** The minutes of a run only go up. */
function minutes(job: Job): readonly Problem[] {
  const back = job.runLog.findIndex((line, index) => line.minute < (job.runLog[index - 1]?.minute ?? 0));
  if (back === -1) return [];
  const place = (index: number): Place => ({ file: job.file, path: ['run log', index, 'minute'] });
  return [outOfOrder(place(back), 'The minutes of a run go up from line to line.', place(back - 1))];
}

function outOfOrder(at: Place, message: string, before: Place): Problem {
  return {
    code: 'dates-out-of-order',
    severity: 'problem',
    at,
    message,
    hint: 'Correct the wrong one of the two.',
    also: [{ at: before, message: 'The other stands here.' }],
  };
}
