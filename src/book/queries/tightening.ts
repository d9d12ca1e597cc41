// Fasteners that carry the rider: never tightened again, or stripped and not repaired.
import { hasWords, remembered } from '../names.ts';
import type { Job, WorkEntry } from '../../records/model.ts';
import { workDone } from '../work-by-verb.ts';
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
      if (entry.verb !== 'tightened' && entry.verb !== 'replaced') continue;
      const key = ground.key(entry.thing);
      open.delete(key);
      if (entry.result !== 'stripped' && entry.result !== 'yielded') continue;
      const message = `${entry.thing} ${entry.result}, and no repair is written after it`;
      open.set(key, query('stripped-not-repaired', entry.at, message, 'write the repair under `repairs:`'));
    }
    for (const repair of job.repairs) open.delete(ground.key(repair.of));
  }
  return [...open.values()];
};

const isHead = remembered(
  (name) => hasWords(name, 'cylinder head') && ['nut', 'bolt', 'stud'].some((word) => hasWords(name, word)),
);
const saysHot = remembered((note) => hasWords(note, 'hot') || hasWords(note, 'warm'));
const saysCold = remembered((words) => hasWords(words, 'cold'));

/** How it was pulled, when that was not cold: said so, or in a record that ran the engine and says cold nowhere. */
function howHot(job: Job, entry: WorkEntry): string | undefined {
  const note = entry.note ?? '';
  if (saysHot(note)) return 'hot';
  const ran = job.heatCycles > 0 || job.runLog.length > 0 || job.ride !== undefined;
  const cold = saysCold([note, job.title, job.purpose].join(' '));
  return ran && !cold ? 'in a record that ran the engine' : undefined;
}

/** Head nuts pulled on an engine that was not cold: their figure is for a cold one. */
export const headTorqueHot: Look = ({ ground }) =>
  workDone(ground, 'tightened').flatMap(({ job, entry }) => {
    const { of = '', name = entry.thing } = ground.fasteners.get(ground.key(entry.thing)) ?? {};
    const how = isHead(`${of} ${name}`) ? howHot(job, entry) : undefined;
    if (how === undefined) return [];
    const message = `${entry.thing} tightened ${how}, and its torque is for a cold engine`;
    return [query('head-torque-hot', entry.at, message, 'tighten it cold; write `note: cold` where it was')];
  });
