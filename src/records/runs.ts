// The records in runs of a few dozen: what follows from a run is kept while its records are the same, so that one changed record among thousands costs one run.
import type { Job } from './model.ts';

/** Records that follow each other. The very same object comes again while its records are the very same. */
export type Run = readonly Job[];

/** A run ends at about one record in so many. */
const usual = 32;

/** By the id alone, so that a record that comes or goes moves no boundary but its own. */
function endsRun({ id }: Job): boolean {
  let state = 0;
  for (let index = 0; index < id.length; index += 1) state = Math.imul(state ^ id.charCodeAt(index), 0x9e3779b1);
  return ((state ^ (state >>> 15)) >>> 0) % usual === 0;
}

/** Runs by their first record; the same record may begin another run in another list, as in the one without what is planned. */
const begun = new WeakMap<Job, readonly Run[]>();
const mostBegun = 4;

const parted = new WeakMap<readonly Job[], readonly Run[]>();

/** The runs of a list of records, which is never changed once it is given here. */
export function runsOf(jobs: readonly Job[]): readonly Run[] {
  const before = parted.get(jobs);
  if (before !== undefined) return before;
  const runs: Run[] = [];
  let from = 0;
  jobs.forEach((job, index) => {
    if (index + 1 < jobs.length && !endsRun(job)) return;
    runs.push(keptRun(jobs, from, index + 1));
    from = index + 1;
  });
  parted.set(jobs, runs);
  return runs;
}

function keptRun(jobs: readonly Job[], from: number, to: number): Run {
  const first = jobs[from];
  if (first === undefined) return [];
  const known = begun.get(first) ?? [];
  const same = known.find((run) => run.length === to - from && run.every((job, index) => job === jobs[from + index]));
  if (same !== undefined) return same;
  const made = jobs.slice(from, to);
  begun.set(first, [made, ...known].slice(0, mostBegun));
  return made;
}

/**
 * The answer for each run in order, worked out once for a run and the very same `given`. `make` may look at nothing but these, and
 * its answer must never be changed.
 */
export function keptByRun<Given extends readonly unknown[], T>(
  make: (run: Run, ...given: Given) => T,
): (jobs: readonly Job[], ...given: Given) => readonly T[] {
  const known = new WeakMap<Run, { readonly given: Given; readonly made: T }>();
  return (jobs, ...given) =>
    runsOf(jobs).map((run) => {
      const before = known.get(run);
      if (before !== undefined && before.given.every((one, index) => one === given[index])) return before.made;
      const made = make(run, ...given);
      known.set(run, { given, made });
      return made;
    });
}

/** What each record gives, one after the other: `jobs.flatMap`, kept by runs. */
export function keptFlat<Given extends readonly unknown[], T>(
  make: (job: Job, ...given: Given) => readonly T[],
): (jobs: readonly Job[], ...given: Given) => readonly T[] {
  const ofRuns = keptByRun((run, ...given: Given): readonly T[] => run.flatMap((job) => make(job, ...given)));
  return (jobs, ...given) => ofRuns(jobs, ...given).flat();
}
