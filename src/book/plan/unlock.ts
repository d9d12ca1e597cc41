// What would free most: each thing that stands in the way, with the jobs that nothing but it holds up, and those that it holds up among others.
// Parts of one supplier are one thing: one order or one way to the shop brings them all.
import type { Job } from '../../records/model.ts';
import type { NotTonight } from './evening.ts';
import type { Obstacle } from './obstacle.ts';
import { obstacleKey } from './obstacle.ts';

export interface Unlock {
  /** One, or the parts of one supplier. */
  readonly obstacles: readonly Obstacle[];
  /** Where the parts come from. */
  readonly supplier?: string;
  /** Held up by nothing else. */
  readonly frees: readonly Job[];
  /** Held up by other things besides. */
  readonly helps: readonly Job[];
}

interface Counted {
  readonly obstacles: Map<string, Obstacle>;
  readonly supplier?: string;
  readonly frees: Job[];
  readonly helps: Job[];
}

function supplierOf(one: Obstacle): string | undefined {
  return one.kind === 'part' ? one.line.part.from : undefined;
}

function groupKey(one: Obstacle): string {
  const supplier = supplierOf(one);
  return supplier === undefined ? obstacleKey(one) : `from ${supplier}`;
}

/** Of two jobs that are too long, the shorter one says how long the evening must be. */
function nearer(known: Obstacle | undefined, one: Obstacle): Obstacle {
  if (known?.kind !== 'time' || one.kind !== 'time' || one.minutes === undefined) return known ?? one;
  return known.minutes === undefined || one.minutes < known.minutes ? one : known;
}

function counted(one: Obstacle): Counted {
  const supplier = supplierOf(one);
  return { obstacles: new Map(), frees: [], helps: [], ...(supplier === undefined ? {} : { supplier }) };
}

/** Most jobs freed first, then most jobs helped, then as they were met. */
export function whatWouldFree(judged: readonly NotTonight[]): readonly Unlock[] {
  const found = new Map<string, Counted>();
  for (const { planned, because } of judged) {
    const groups = new Set(because.map(groupKey));
    for (const one of because) {
      const known = found.get(groupKey(one)) ?? counted(one);
      known.obstacles.set(obstacleKey(one), nearer(known.obstacles.get(obstacleKey(one)), one));
      found.set(groupKey(one), known);
    }
    for (const key of groups) {
      const known = found.get(key);
      (groups.size === 1 ? known?.frees : known?.helps)?.push(planned.job);
    }
  }
  return [...found.values()]
    .map((one) => ({ ...one, obstacles: [...one.obstacles.values()] }))
    .toSorted((a, b) => b.frees.length - a.frees.length || b.helps.length - a.helps.length);
}

/** So many are said where none does it by itself. */
const few = 3;

/** What frees a job by itself, or helps more than one; where nothing does, what takes most out of the way. */
export function worthSaying(all: readonly Unlock[]): readonly Unlock[] {
  const worth = all.filter(({ frees, helps }) => frees.length > 0 || helps.length > 1);
  if (worth.length > 0) return worth;
  return all.toSorted((a, b) => b.obstacles.length - a.obstacles.length).slice(0, few);
}

/** Does anything free a job by itself. */
export function freesAny(all: readonly Unlock[]): boolean {
  return all.some(({ frees }) => frees.length > 0);
}

export const nothingByItself = 'Nothing frees a job by itself; these take most out of the way.';
