// What a record renewed, so far as a schedule begins again from it.
import type { Job } from '../../records/model.ts';
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
  if (engineParts.has(key)) return true;
  const words = key
    .split(' ')
    .filter((word) => !/^[+\d]/u.test(word) && !['left', 'right', 'standard', 'new'].includes(word));
  return engineParts.has(words.join(' '));
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
