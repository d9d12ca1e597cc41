// What a record renewed, so far as a schedule begins again from it.
import type { Job } from '../../records/model.ts';
import { shorter } from '../basis.ts';
import type { Ground } from '../ground.ts';
import { plainName } from '../names.ts';

/** Parts that make a running-in when they are new: bore, piston, crank and their bearings (common practice). */
const engineParts = new Set(
  [
    'engine',
    'bore',
    'barrel',
    'cylinder',
    'piston',
    'crank',
    'crankshaft',
    'big end',
    'main bearing',
    'crankcase bearing',
  ].map(plainName),
);

/** Does the key begin with a part of the engine: `piston +0.50 left`, but not `piston ring`. */
function ofEngine(key: string): boolean {
  for (let name: string | undefined = key; name !== undefined; name = shorter(name))
    if (engineParts.has(name)) return true;
  return false;
}

/** Keys of the parts renewed by a record; `engine` stands for all that make a running-in. */
export function renewedParts(job: Job, ground: Ground): readonly string[] {
  const repaired = job.repairs.map((one) => one.of);
  const fitted = job.parts.filter((part) => part.state === 'fitted').map((part) => part.part);
  const replaced = job.work.filter((entry) => entry.verb === 'replaced').map((entry) => entry.thing);
  const keys = new Set([...repaired, ...fitted, ...replaced].map(ground.key));
  if ([...keys].some(ofEngine)) keys.add('engine');
  return [...keys];
}
