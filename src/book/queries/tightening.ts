// Fasteners that carry the rider: never tightened again, or stripped and not repaired.
import type { Look } from './query.ts';
import { query } from './query.ts';

/** Came off with a part that went back, and no record tightened it since; covers, brackets and trim are not asked about. */
export const notTightenedAgain: Look = ({ torque, offWork }) => {
  const stillOff = new Set(offWork.off.open.map((line) => line.entry));
  return torque.flatMap(({ fastener, untightened }) => {
    if (untightened === undefined || fastener.duty !== undefined || stillOff.has(untightened.entry)) return [];
    const { entry, job } = untightened;
    const message = `${fastener.name}: ${entry.thing} ${entry.verb} on ${job.date.from}, and no record says that it was tightened since`;
    return [query('not-tightened-again', entry.at, message, 'tighten it, and write the entry')];
  });
};

/** A thread that yielded or stripped, and no repair after it. */
export const strippedNotRepaired: Look = ({ ground }) => {
  const open = new Map<string, ReturnType<typeof query>>();
  for (const job of ground.jobs) {
    for (const entry of job.work) {
      const key = ground.key(entry.thing);
      if (entry.verb !== 'tightened' && entry.verb !== 'replaced') continue;
      open.delete(key);
      if (entry.result !== 'stripped' && entry.result !== 'yielded') continue;
      const message = `${entry.thing} ${entry.result}, and no repair is written after it`;
      open.set(key, query('stripped-not-repaired', entry.at, message, 'write the repair under `repairs:`'));
    }
    for (const repair of job.repairs) open.delete(ground.key(repair.of));
  }
  return [...open.values()];
};
