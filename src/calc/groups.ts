// The calculations by what a mechanic is doing when he wants them: the order of the list on the command line and on the site.
import type { Calculation } from './calculation.ts';
import { calculations } from './list.ts';

export interface Group {
  readonly name: string;
  readonly calculations: readonly Calculation[];
}

/** Name of each group and the calculation that it begins with; the shelf is in the order of the workshop. */
const beginnings: readonly (readonly [string, string])[] = [
  ['Threads and strength', 'thread-geometry'],
  ['Torque', 'bolt-torque'],
  ['Setting the wrench', 'wrench-setting'],
  ['Compression and geometry', 'displacement'],
  ['Ignition timing', 'piston-position'],
  ['Air and mixture', 'standard-atmosphere'],
  ['Oil in fuel', 'oil-in-fuel'],
  ['Gearing and speed', 'overall-ratio'],
  ['Chain', 'chain-length'],
  ['Tyres', 'tyre-marking'],
  ['Electrics', 'battery-volts'],
  ['Wear and fits', 'bore-wear'],
  ['Deciding, wear to the limit, calendar', 'limit-verdict'],
];

/** Every calculation of the shelf in its group. */
export function groups(): readonly Group[] {
  const made: { name: string; calculations: Calculation[] }[] = [];
  const first = new Map(beginnings.map(([name, id]) => [id, name]));
  for (const one of calculations) {
    const name = first.get(one.id);
    if (name !== undefined || made.length === 0) made.push({ name: name ?? 'Others', calculations: [] });
    made.at(-1)?.calculations.push(one);
  }
  return made;
}
