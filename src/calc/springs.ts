// Springs: rate, and how far they settle.
import { millimetre, newton, newtonPerMillimetre, one, percent } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying } from './input.ts';

export const springRate = calculation({
  id: 'spring-rate',
  name: 'Spring rate',
  purpose: 'The rate of a spring from two loads on the bench or from its wire, and its load at a length.',
  formula: 'k = ΔF/Δx, or k = G d⁴/(8 n D³)',
  inputs: {
    'first load': quantity('F₁', 'first load', newton, { optional: true, low: 0 }),
    'first length': quantity('x₁', 'length under it', millimetre, { optional: true, above: 0 }),
    'second load': quantity('F₂', 'second load', newton, { optional: true, above: 0 }),
    'second length': quantity('x₂', 'length under it', millimetre, { optional: true, above: 0 }),
    wire: quantity('d', 'wire', millimetre, { optional: true, above: 0 }),
    coil: quantity('D', 'mean coil diameter', millimetre, { optional: true, above: 0 }),
    turns: quantity('n', 'working coils', one, { optional: true, above: 0 }),
  },
  outputs: { rate: result('k', 'rate', newtonPerMillimetre, 2) },
  range: 'Straight springs of round steel wire (G = 79 300 MPa); progressive springs have no one rate.',
  source: 'Definition; Shigley, equation 10-9.',
  tables: [],
  cautions: ['loaded-spring'],
  example: {
    given: { 'first load': '100 N', 'first length': '180 mm', 'second load': '300 N', 'second length': '150 mm' },
    gives: { rate: '6.67 N/mm' },
  },
  work: (given) => {
    const [f1, x1, f2, x2] = [
      given.maybe('first load', newton),
      given.maybe('first length', millimetre),
      given.maybe('second load', newton),
      given.maybe('second length', millimetre),
    ];
    if (f1 !== undefined && x1 !== undefined && f2 !== undefined && x2 !== undefined) {
      if ((f2 - f1) * (x1 - x2) <= 0)
        given.doubt('calculation-out-of-range', 'the larger load must give the shorter length');
      return { rate: (f2 - f1) * (x1 - x2) > 0 ? (f2 - f1) / (x1 - x2) : undefined };
    }
    const [d, D, n] = [given.maybe('wire', millimetre), given.maybe('coil', millimetre), given.maybe('turns', one)];
    if (d !== undefined && D !== undefined && n !== undefined) return { rate: (79_300 * d ** 4) / (8 * n * D ** 3) };
    given.doubt('calculation-value-missing', 'two loads with their lengths, or wire, coil and turns, are wanted');
    return {};
  },
});

export const sag = calculation({
  id: 'sag',
  name: 'Sag',
  purpose: 'How far the springs settle under machine and rider, against the travel.',
  formula: 'sag = extended − loaded;  share = sag/travel',
  inputs: {
    extended: quantity('', 'length fully extended', millimetre, { above: 0 }),
    machine: quantity('', 'length under the machine alone', millimetre, { optional: true, above: 0 }),
    rider: quantity('', 'length with rider', millimetre, { optional: true, above: 0 }),
    travel: quantity('', 'travel', millimetre, { optional: true, above: 0 }),
  },
  outputs: {
    'machine sag': result('', 'under the machine', millimetre, 0, 'extended'),
    'rider sag': result('', 'with rider', millimetre, 0, 'extended'),
    share: result('', 'of the travel, with rider', percent, 0),
    says: saying('what it points to'),
  },
  range:
    'Push down and let rise, then lift and let settle; take the mean, which takes the stiction out. A quarter to a third of the travel with rider is common practice.',
  source: 'Common practice.',
  tables: [],
  cautions: ['on-the-stand'],
  example: {
    given: { extended: '120 mm', machine: '108 mm', rider: '90 mm', travel: '100 mm' },
    gives: { 'machine sag': '12 mm', 'rider sag': '30 mm', share: '30 %', says: 'in the common range' },
  },
  work: (given) => {
    const extended = given.number('extended', millimetre);
    const [machine, rider, travel] = [
      given.maybe('machine', millimetre),
      given.maybe('rider', millimetre),
      given.maybe('travel', millimetre),
    ];
    const loaded = rider === undefined ? undefined : extended - rider;
    if (loaded !== undefined && loaded < 0)
      given.doubt('calculation-unlikely', 'the spring is longer under the rider than free: readings are swapped');
    const share = loaded === undefined || travel === undefined ? undefined : (loaded / travel) * 100;
    return {
      'machine sag': machine === undefined ? undefined : extended - machine,
      'rider sag': loaded,
      share,
      says: share === undefined ? undefined : sagSays(share),
    };
  },
});

function sagSays(share: number): string {
  if (share < 25) return 'less than a quarter: stiff springs or much preload';
  return share > 35 ? 'more than a third: soft or tired springs' : 'in the common range';
}
