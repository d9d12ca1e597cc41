// What proves a check and what undoes it, and which records have to do with any: the others need not be walked again.
import type { Check, Content } from '../records/content-model.ts';
import { keptWith } from '../records/kept-with.ts';
import type { Job } from '../records/model.ts';
import { keptFlat } from '../records/runs.ts';
import type { Named, Reach, Touch } from './disturbance.ts';
import { happensAfterChecks, touchByKind, touchBySetting, touchByWork } from './disturbance.ts';
import type { Namer } from './names.ts';

/** Which checks are proved and undone by what, by keys. The very same object while content and maker's data are. */
export interface Wiring {
  readonly named: Named;
  readonly reach: Reach;
  readonly checks: readonly Check[];
  /** Ids of the checks that something undoes. */
  readonly undoes: ReadonlyMap<string, readonly string[]>;
  /** Id of the check that is ticked, or read, under a key. */
  readonly proves: ReadonlyMap<string, string>;
}

export const wiringOf = keptWith((checks: readonly Check[], key: Namer, content: Content, reach: Reach): Wiring => {
  const undoes = new Map<string, string[]>();
  for (const check of checks) {
    for (const thing of new Set([check.id, ...check.undoneBy])) {
      const list = undoes.get(key(thing));
      if (list === undefined) undoes.set(key(thing), [check.id]);
      else list.push(check.id);
    }
  }
  const proves = new Map(checks.map(({ id }) => [key(id), id]));
  return { named: { key, content }, reach, checks, undoes, proves };
});

/** Of thousands of records most touch no check and tick none: those need not be walked again. */
export const touching = keptFlat((job: Job, wiring: Wiring) => (touchesAny(job, wiring) ? [job] : []));

function touchesAny(job: Job, { named, reach, undoes, proves }: Wiring): boolean {
  // What is ridden or started is asked about whether it touches anything or not.
  if (happensAfterChecks(job) || job.checks.length > 0) return true;
  if (job.readings.some(({ item }) => proves.has(named.key(item)))) return true;
  let any = false;
  const touch: Touch = (keys) => {
    any ||= keys.some((key) => undoes.has(key));
  };
  touchByKind(job, named, touch);
  touchByWork(job, named, reach, touch);
  for (const reading of job.readings) touchBySetting(reading, named, reach, touch);
  return any;
}
