// Work on the engine in an order that the trade would not believe.
import { hasWords, remembered } from '../names.ts';
import { makeReach, othersOf, wasSet } from '../disturbance.ts';
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

/** A setting that was set before what moves it was changed: timing before the points gap. */
export const settingOlderThanItsMover: Look = ({ ground }) => {
  const reach = makeReach(ground);
  const last = new Map<string, number>();
  const moved = new Map<string, { readonly step: number; readonly by: string; readonly on: string }>();
  const place = new Map<string, ReturnType<typeof query>['at']>();
  let step = 0;
  for (const job of ground.jobs) {
    for (const reading of job.readings) {
      step += 1;
      const key = ground.key(reading.item);
      const others = othersOf(key, reach);
      if (others.length > 0 && wasSet(reading))
        for (const other of others) moved.set(other, { step, by: reading.item, on: job.date.from });
      last.set(key, step);
      place.set(key, reading.at);
    }
  }
  return [...moved].flatMap(([key, by]) => {
    const at = place.get(key);
    const read = last.get(key);
    if (at === undefined || read === undefined || read > by.step) return [];
    const name = ground.settings.get(key)?.name ?? ground.limits.get(key)?.name ?? key;
    return [
      query(
        'setting-older-than-its-mover',
        at,
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
