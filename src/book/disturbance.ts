// What touches what: from the things a record worked on to the checks that must be proved again.
import type { Job, MakerData, Reading, ReadingValue } from '../records/model.ts';
import type { Ground } from './ground.ts';
import { remembered, withoutSide } from './names.ts';

/**
 * Called for each thing that was touched: the keys of the thing and of all it disturbs, and the words to say so, put
 * together only when something is undone by it.
 */
export type Touch = (keys: readonly string[], thing: string, how: string) => void;

/** From a key to everything that is disturbed with it: itself, the thing without its side, and all that hangs on them. */
export type Reach = (key: string) => readonly string[];

function followed(key: string, direct: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const bare = withoutSide(key);
  if (bare === key && !direct.has(key)) return [key];
  const found = new Set([key, bare]);
  for (const one of found) for (const next of direct.get(one) ?? []) found.add(next);
  return [...found];
}

/** Kept with the maker's data: what hangs on what does not change with a record. */
const reaches = new WeakMap<MakerData, Reach>();

/** `disturbs` of fasteners, limits and settings, followed to the end; rings are walked once. */
export function makeReach(ground: Ground): Reach {
  const known = reaches.get(ground.maker);
  if (known !== undefined) return known;
  const made = reachOf(ground);
  reaches.set(ground.maker, made);
  return made;
}

function reachOf(ground: Ground): Reach {
  const direct = new Map<string, readonly string[]>();
  for (const [id, one] of [...ground.fasteners, ...ground.limits, ...ground.settings]) {
    const disturbs = one.disturbs.map(ground.key);
    direct.set(id, [...(direct.get(id) ?? []), ...disturbs]);
  }
  const known = new Map<string, readonly string[]>();
  return (key) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const reach = followed(key, direct);
    known.set(key, reach);
    return reach;
  };
}

const others = new WeakMap<readonly string[], readonly string[]>();

/** What hangs on a thing, without the thing itself. */
export function othersOf(key: string, reach: Reach): readonly string[] {
  const all = reach(key);
  const before = others.get(all);
  if (before !== undefined) return before;
  const bare = withoutSide(key);
  const made = all.filter((one) => one !== key && one !== bare);
  others.set(all, made);
  return made;
}

/** What is needed to name what a record touched. */
export type Named = Pick<Ground, 'key' | 'content'>;

/** What the work of a record touched, before anything it left or ticked: any entry, part fitted, repair or procedure. */
export function touchByWork(job: Job, ground: Named, reach: Reach, touch: Touch): void {
  const { key } = ground;
  for (const entry of job.work) {
    touch(reach(key(entry.thing)), entry.thing, ` ${entry.verb}`);
    for (const one of entry.fasteners) touch(reach(key(one.id)), one.id, ` ${entry.verb}`);
  }
  for (const part of job.parts) if (part.state === 'fitted') touch(reach(key(part.part)), part.part, ' fitted');
  for (const repair of job.repairs) touch(reach(key(repair.of)), repair.of, `: ${repair.now}`);
  for (const id of job.procedures) {
    const procedure = ground.content.procedures.get(id);
    const title = procedure?.title ?? id;
    for (const thing of [id, ...(procedure?.disturbs ?? [])]) touch(reach(key(thing)), title, '');
  }
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
export function touchBySetting(reading: Reading, ground: Named, reach: Reach, touch: Touch): void {
  if (reading.left.length === 0) return;
  const hanging = othersOf(ground.key(reading.item), reach);
  if (hanging.length > 0 && wasSet(reading)) touch(hanging, reading.item, ' set');
}

/** Kinds of work that happen after what their record ticked: the checks were for this very start or ride. */
const afterItsChecks: ReadonlySet<string> = new Set(['first start', 'ride', 'road test', 'running-in']);

/** True when the record's kind, as a thing that undoes checks, comes after the record's own checks. */
export function happensAfterChecks(job: Job): boolean {
  return job.ride !== undefined || afterItsChecks.has(job.kind);
}

const alone = remembered((key): readonly string[] => [key]);
const withRide = remembered((key): readonly string[] => [key, 'ride']);

/** The record's kind as a thing that undoes checks: `lay-up`, `first start`, `ride`. */
export function touchByKind(job: Job, ground: Named, touch: Touch): void {
  const key = ground.key(job.kind);
  touch(job.ride === undefined || key === 'ride' ? alone(key) : withRide(key), job.kind, ` of ${job.date.from}`);
}
