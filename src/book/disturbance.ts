// What touches what: from the things a record worked on to the checks that must be proved again.
import type { Job, Reading, ReadingValue, WorkEntry } from '../records/model.ts';
import type { Ground } from './ground.ts';
import { withoutSide } from './names.ts';

/** Something that was touched, with the words to say so. */
export interface Touch {
  /** Keys of the thing itself and of everything it disturbs, however far along. */
  readonly keys: readonly string[];
  readonly what: string;
}

/** From a key to everything that is disturbed with it: itself, the thing without its side, and all that hangs on them. */
export type Reach = (key: string) => readonly string[];

/** `disturbs` of fasteners, limits and settings, followed to the end; rings are walked once. */
export function makeReach(ground: Ground): Reach {
  const direct = new Map<string, readonly string[]>();
  for (const [id, one] of [...ground.fasteners, ...ground.limits, ...ground.settings]) {
    const disturbs = one.disturbs.map(ground.key);
    direct.set(id, [...(direct.get(id) ?? []), ...disturbs]);
  }
  const known = new Map<string, readonly string[]>();
  return (key) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const found = new Set([key, withoutSide(key)]);
    for (const one of found) for (const next of direct.get(one) ?? []) found.add(next);
    const reach = [...found];
    known.set(key, reach);
    return reach;
  };
}

/** What hangs on a thing, without the thing itself. */
export function othersOf(key: string, reach: Reach): readonly string[] {
  const bare = withoutSide(key);
  return reach(key).filter((one) => one !== key && one !== bare);
}

function touchOf(thing: string, what: string, ground: Ground, reach: Reach): Touch {
  return { keys: reach(ground.key(thing)), what };
}

function byEntry(entry: WorkEntry, ground: Ground, reach: Reach): readonly Touch[] {
  const what = `${entry.thing} ${entry.verb}`;
  const fasteners = entry.fasteners.map((one) => touchOf(one.id, `${one.id} ${entry.verb}`, ground, reach));
  return [touchOf(entry.thing, what, ground, reach), ...fasteners];
}

/** What the work of a record touched, before anything it left or ticked: any entry, part fitted, repair or procedure. */
export function touchesOfWork(job: Job, ground: Ground, reach: Reach): readonly Touch[] {
  const entries = job.work.flatMap((entry) => byEntry(entry, ground, reach));
  const fitted = job.parts.filter((part) => part.state === 'fitted');
  const parts = fitted.map((part) => touchOf(part.part, `${part.part} fitted`, ground, reach));
  const repairs = job.repairs.map((repair) => touchOf(repair.of, `${repair.of}: ${repair.now}`, ground, reach));
  const procedures = job.procedures.flatMap((id) => {
    const procedure = ground.content.procedures.get(id);
    const disturbed = (procedure?.disturbs ?? []).map((thing) => touchOf(thing, procedure?.title ?? id, ground, reach));
    return [touchOf(id, procedure?.title ?? id, ground, reach), ...disturbed];
  });
  return [...entries, ...parts, ...repairs, ...procedures];
}

function sameValue(left: ReadingValue, found: readonly ReadingValue[]): boolean {
  const before = found.find((one) => one.position === left.position);
  if (before?.value.kind !== 'read' || left.value.kind !== 'read') return false;
  return before.value.written.quantity === left.value.written.quantity;
}

/** True when a reading was left at another value than it was found at: something was set. */
export function wasSet(reading: Reading): boolean {
  return reading.left.some((left) => left.value.kind !== 'unknown' && !sameValue(left, reading.found));
}

/** A setting that was changed disturbs what hangs on it, not itself. */
export function touchOfSetting(reading: Reading, ground: Ground, reach: Reach): Touch | undefined {
  if (!wasSet(reading)) return undefined;
  const key = ground.key(reading.item);
  return { keys: othersOf(key, reach), what: `${reading.item} set` };
}

/** Kinds of work that happen after what their record ticked: the checks were for this very start or ride. */
const afterItsChecks: ReadonlySet<string> = new Set(['first start', 'ride', 'road test', 'running-in']);

/** The record's kind as a thing that undoes checks (`lay-up`, `first start`), and whether it comes after the record's own checks. */
export function touchOfKind(job: Job, ground: Ground): Touch & { readonly afterChecks: boolean } {
  const keys = [ground.key(job.kind), ...(job.ride === undefined ? [] : ['ride'])];
  return {
    keys,
    what: `${job.kind} of ${job.date.from}`,
    afterChecks: afterItsChecks.has(job.kind) || job.ride !== undefined,
  };
}
