// What a record renewed, so far as a schedule begins again from it.
import { shorter } from '../basis.ts';
import { keptByJob } from '../kept-by-job.ts';
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

const none: ReadonlySet<string> = new Set();

/** Keys of the parts renewed by a record; `engine` stands for all that make a running-in. */
export const renewedParts = keptByJob((job, key): ReadonlySet<string> => {
  if (job.repairs.length + job.parts.length + job.work.length === 0) return none;
  const keys = new Set<string>();
  for (const one of job.repairs) keys.add(key(one.of));
  for (const part of job.parts) if (part.state === 'fitted') keys.add(key(part.part));
  for (const entry of job.work) if (entry.verb === 'replaced') keys.add(key(entry.thing));
  if ([...keys].some(ofEngine)) keys.add('engine');
  return keys;
});
