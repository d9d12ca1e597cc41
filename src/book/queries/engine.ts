// Work on the engine in an order that the trade would not believe.
import type { Place } from '../../problem/problem.ts';
import { keptByRun } from '../../records/runs.ts';
import { hasWords, remembered, type Namer } from '../names.ts';
import { makeReach, othersOf, wasSet, type Reach } from '../disturbance.ts';
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Head nuts tightened, run hot after it, never tightened again. */
export const noReTorqueAfterHeat: Look = ({ ground, torque }) => {
  const lastHeat = ground.jobs.findLast((job) => job.heatCycles > 0);
  if (lastHeat === undefined) return [];
  const hot = ground.order.get(lastHeat) ?? 0;
  const held = (name: string): boolean => ['nut', 'bolt', 'stud'].some((word) => hasWords(name, word));
  const head = torque.filter(
    ({ last, fastener }) =>
      last !== undefined && held(fastener.name) && hasWords(`${fastener.of ?? ''} ${fastener.name}`, 'cylinder head'),
  );
  const firstHeatAfter = (order: number): boolean => hot > order;
  return head.flatMap((row) => {
    const last = row.last;
    if (
      last === undefined ||
      !firstHeatAfter(ground.order.get(last.job) ?? 0) ||
      tightenedTwice(row.fastener.id, ground)
    )
      return [];
    const message = `${row.fastener.name}: tightened ${last.job.date.from}, run hot ${lastHeat.date.from}, not tightened again since`;
    return [query('no-re-torque-after-heat', last.entry.at, message, 'tighten them again when the engine is cold')];
  });
};

/** Tightened again after a heat cycle that followed the last strip: the later figure stands, more heat changes nothing. */
function tightenedTwice(id: string, ground: Parameters<Look>[0]['ground']): boolean {
  const key = ground.key(id);
  let heatSince = false;
  let tight = false;
  let again = false;
  for (const job of ground.jobs) {
    for (const entry of job.work) {
      const touches = ground.key(entry.thing) === key || entry.fasteners.some((one) => ground.key(one.id) === key);
      if (!touches) continue;
      if (entry.verb !== 'tightened') [tight, heatSince, again] = [false, false, false];
      else if (tight && heatSince) again = true;
      else [tight, heatSince] = [true, false];
    }
    if (tight && job.heatCycles > 0) heatSince = true;
  }
  return again;
}

/** What one run of records moved and read; steps are counted in the run. */
interface Moves {
  readonly steps: number;
  readonly moved: ReadonlyMap<string, { readonly step: number; readonly by: string; readonly on: string }>;
  readonly last: ReadonlyMap<string, { readonly step: number; readonly at: Place }>;
}

const movesIn = keptByRun((run, key: Namer, reach: Reach): Moves => {
  const last = new Map<string, { readonly step: number; readonly at: Place }>();
  const moved = new Map<string, { readonly step: number; readonly by: string; readonly on: string }>();
  let steps = 0;
  for (const job of run) {
    for (const reading of job.readings) {
      steps += 1;
      const item = key(reading.item);
      const others = othersOf(item, reach);
      if (others.length > 0 && wasSet(reading))
        for (const other of others) moved.set(other, { step: steps, by: reading.item, on: job.date.from });
      last.set(item, { step: steps, at: reading.at });
    }
  }
  return { steps, moved, last };
});

/** A setting that was set before what moves it was changed: timing before the points gap. */
export const settingOlderThanItsMover: Look = ({ ground }) => {
  const all = movesIn(ground.jobs, ground.key, makeReach(ground));
  const last = new Map<string, { readonly step: number; readonly at: Place }>();
  const moved = new Map<string, { readonly step: number; readonly by: string; readonly on: string }>();
  let before = 0;
  for (const run of all) {
    for (const [key, one] of run.moved) moved.set(key, { ...one, step: before + one.step });
    for (const [key, { step, at }] of run.last) last.set(key, { step: before + step, at });
    before += run.steps;
  }
  return [...moved].flatMap(([key, by]) => {
    const read = last.get(key);
    if (read === undefined || read.step > by.step) return [];
    const name = ground.settings.get(key)?.name ?? ground.limits.get(key)?.name ?? key;
    return [
      query(
        'setting-older-than-its-mover',
        read.at,
        `${name} was read before ${by.by} was set on ${by.on}, and has moved with it`,
        'set or read it again',
      ),
    ];
  });
};

/** Compression of a four-stroke judged before its valve clearances were set. */
export const compressionBeforeTappets: Look = ({ ground }) => {
  if (ground.records.machine.features.stroke !== 'four') return [];
  const clearance = remembered((item) =>
    ['tappet', 'valve clearance', 'valve lash'].some((word) => hasWords(item, word)),
  );
  const compression = remembered((item) => hasWords(item, 'compression'));
  let set = false;
  const early = ground.jobs.flatMap((job) =>
    job.readings.filter((reading) => {
      if (clearance(reading.item)) set = true;
      return !set && compression(reading.item);
    }),
  );
  const [first] = early;
  if (first === undefined) return [];
  return [
    query(
      'compression-before-tappets',
      first.at,
      'compression read before the valve clearances: a valve held off its seat reads like a worn bore',
      'set the clearances cold and read it again',
    ),
  ];
};
