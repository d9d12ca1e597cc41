// What the records have worked on: a cause may be cured by it or brought about by it, and is to be proved again either way.
import type { Day } from '../../quantity/day.ts';
import type { FaultCause } from '../../records/fault-model.ts';
import type { Job } from '../../records/model.ts';
import { plainName, withoutSide } from '../names.ts';

export interface WorkedOn {
  /** Cause → what was done, in words. */
  readonly cured: ReadonlyMap<string, string>;
  readonly moved: ReadonlyMap<string, string>;
  /** Whether a record from `from` on worked on something that cures or moves the cause; `after`: later records only. */
  readonly since: (cause: string, from: Day, after: boolean) => boolean;
}

/** Work that renews, cleans or sets a thing; taking it off alone cures nothing. */
const curing = new Set(['replaced', 'refitted', 'filled', 'connected', 'closed']);

interface Touch {
  readonly day: Day;
  readonly job: string;
  readonly words: string;
}

/**
 * Walks the records of what was done since the engine ran last, oldest first: a run after it has proved or disproved a cure.
 * `called` says what a thing is called on paper.
 */
export function workedOn(
  causes: readonly FaultCause[],
  jobs: readonly Job[],
  from: Day,
  called: (thing: string) => string,
): WorkedOn {
  const ran = jobs.findLast(hasRun);
  const asked = new Set(causes.flatMap((cause) => [...cause.curedBy, ...cause.movedBy].map(plainName)));
  const touches = new Map<string, Touch>();
  for (const job of jobs) {
    if (job.date.to < from || (ran !== undefined && (job === ran || job.date.to < ran.date.to))) continue;
    for (const thing of thingsOf(job)) {
      const key = plainName(thing);
      const bare = withoutSide(key);
      if (!asked.has(key) && !asked.has(bare)) continue;
      const words = `${called(thing)} (“${job.title}”, ${job.date.from})`;
      const touch = { day: job.date.from, job: job.id, words };
      touches.set(key, touch);
      touches.set(bare, touch);
    }
  }
  const last = (things: readonly string[]): Touch | undefined =>
    things
      .flatMap((thing) => touches.get(plainName(thing)) ?? [])
      .toSorted((a, b) => (a.day < b.day ? 1 : -1))
      .at(0);
  const cured = new Map<string, string>();
  const moved = new Map<string, string>();
  const days = new Map<string, Day>();
  for (const cause of causes) {
    const cure = last(cause.curedBy);
    const move = last(cause.movedBy);
    const newest = [cure, move]
      .flatMap((one) => one?.day ?? [])
      .toSorted()
      .at(-1);
    if (newest !== undefined) days.set(cause.id, newest);
    if (cure !== undefined && (move === undefined || cure.day >= move.day)) cured.set(cause.id, cure.words);
    else if (move !== undefined) moved.set(cause.id, move.words);
  }
  return {
    cured,
    moved,
    since: (cause, day, after) => {
      const worked = days.get(cause);
      return worked !== undefined && (after ? worked > day : worked >= day);
    },
  };
}

/** A ride, a heat cycle, or a run log in which it fired and ran; kicks without a run are no run. */
export function hasRun(job: Job): boolean {
  if (job.ride !== undefined || job.heatCycles > 0) return true;
  return job.runLog.some(({ saw }) => /\b(?:fired|ran|runs|idles|idled|revs)\b/iu.test(saw));
}

function thingsOf(job: Job): readonly string[] {
  return [
    ...job.work.filter((entry) => curing.has(entry.verb)).map((entry) => entry.thing),
    ...job.parts.filter((part) => part.state === 'fitted').map((part) => part.part),
    ...job.readings.filter((reading) => reading.left.some((one) => one.value.kind === 'read')).map(({ item }) => item),
    ...job.checks.filter(({ check }) => check === 'bores-oiled').map(({ check }) => check),
  ];
}
