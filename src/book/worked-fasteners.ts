// What the records did to each fastener: touched it, loosened it, tightened it, repaired its hole.
import type { Job, Repair, WorkEntry } from '../records/model.ts';
import type { Ground } from './ground.ts';

interface Done {
  readonly job: Job;
  readonly entry: WorkEntry;
}

/** By key of the fastener. */
export interface Worked {
  readonly touched: Set<string>;
  /** How it was tightened last. */
  readonly last: Map<string, Done>;
  /** Loosened, or off with a part, and not tightened since. */
  readonly loosened: Map<string, Done>;
  readonly repaired: Map<string, { readonly job: Job; readonly repair: Repair }>;
}

const loosens: ReadonlySet<string> = new Set(['removed', 'loosened', 'opened', 'replaced', 'lost']);

/** Put back with a torque or its result beside it: the fasteners of the entry are tightened by it. */
function tightens(entry: WorkEntry): boolean {
  return (
    entry.verb === 'tightened' ||
    (entry.verb === 'refitted' && (entry.torque !== undefined || entry.result !== undefined))
  );
}

/** Walks the work entries once, in order. */
export function workedFasteners(ground: Ground): Worked {
  const found: Worked = { touched: new Set(), last: new Map(), loosened: new Map(), repaired: new Map() };
  for (const job of ground.jobs) {
    for (const entry of job.work) {
      const keys = [entry.thing, ...entry.fasteners.map((one) => one.id)].map(ground.key);
      for (const key of keys) {
        found.touched.add(key);
        if (loosens.has(entry.verb)) found.loosened.set(key, { job, entry });
        if (!tightens(entry)) continue;
        found.loosened.delete(key);
        found.last.set(key, { job, entry });
      }
    }
    for (const repair of job.repairs) found.repaired.set(ground.key(repair.of), { job, repair });
  }
  return found;
}
