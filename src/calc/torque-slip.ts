// The unit-slip guard: a written torque against what the joint can carry and against its neighbours.
import { newtonMetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { list, quantity, result, saying } from './input.ts';

interface Slip {
  readonly factor: number;
  readonly says: string;
}

/** A value written as N·m that was meant in another unit is smaller or larger by one of these. */
export const unitSlips: readonly Slip[] = [
  { factor: 9.80665, says: 'kgf·m read as N·m (9.81)' },
  { factor: 1.3558179483314, says: 'lbf·ft read as N·m (1.36)' },
  { factor: 1 / 9.80665, says: 'N·m read as kgf·m (9.81)' },
  { factor: 1 / 1.3558179483314, says: 'N·m read as lbf·ft (0.74)' },
  { factor: 12, says: 'lbf·ft read as lbf·in (12)' },
  { factor: 1 / 12, says: 'lbf·in read as lbf·ft (12)' },
  { factor: 0.1, says: 'a point slipped by one place' },
  { factor: 10, says: 'a point slipped by one place' },
];

/** The slip that brings `value` nearest to `expected`, when it comes within 25 % and the value itself does not within 60 %. */
export function likelySlip(value: number, expected: number): Slip | undefined {
  const off = (one: number): number => Math.abs(Math.log(one / expected));
  if (!(value > 0) || !(expected > 0) || off(value) < Math.log(1.6)) return undefined;
  const best = [...unitSlips].toSorted((a, b) => off(value * a.factor) - off(value * b.factor))[0];
  return best === undefined || off(value * best.factor) > Math.log(1.25) ? undefined : best;
}

function median(values: readonly number[]): number | undefined {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted[Math.floor((sorted.length - 1) / 2)];
  const next = sorted[Math.floor(sorted.length / 2)];
  return middle === undefined || next === undefined ? undefined : (middle + next) / 2;
}

export const torqueSlip = calculation({
  id: 'torque-slip',
  name: 'Unit slip of a torque',
  purpose:
    'Asks whether a written torque was meant in another unit, by what the joint can carry and what its neighbours have.',
  formula: '|ln(T · k / T_expected)| least over k = 9.81, 12, 1.36, 0.74, 10 and their inverses',
  inputs: {
    torque: quantity('T', 'torque as written', newtonMetre, { above: 0 }),
    limit: quantity('T_max', 'most that the joint can carry', newtonMetre, { optional: true, above: 0 }),
    neighbours: list('', 'torques of fasteners of the same thread', newtonMetre, { optional: true, above: 0 }),
  },
  outputs: {
    meant: result('', 'probably meant', newtonMetre, 1),
    factor: result('k', 'factor', one, 2),
    slip: saying('what slipped'),
  },
  range: 'A help for the eye, not a proof: joints of one thread differ by a factor of two in the same book.',
  source: 'Unit factors; the thresholds are our choice.',
  tables: ['values-units'],
  cautions: ['book-torque'],
  example: {
    given: { torque: '2.5 N·m', neighbours: '22 N·m; 24 N·m; 26 N·m' },
    gives: { meant: '24.5 N·m', slip: 'kgf·m read as N·m (9.81)' },
  },
  work: (given) => {
    const torque = given.number('torque', newtonMetre);
    const limit = given.maybe('limit', newtonMetre);
    const expected = median(given.list('neighbours', newtonMetre)) ?? (limit === undefined ? undefined : 0.7 * limit);
    const slip = expected === undefined ? undefined : likelySlip(torque, expected);
    if (limit !== undefined && torque > 1.5 * limit)
      given.doubt('torque-above-strength', 'this torque is far more than the fastener can carry');
    if (slip === undefined) return {};
    given.doubt('torque-unit-slip', 'this torque does not fit its joint: ' + slip.says + '?');
    return { meant: torque * slip.factor, factor: slip.factor, slip: slip.says };
  },
});
