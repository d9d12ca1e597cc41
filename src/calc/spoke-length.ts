// Spoke length from rim, flange and crossing.
import { degree, millimetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

export const spokeLength = calculation({
  id: 'spoke-length',
  name: 'Spoke length',
  purpose: 'The length of a spoke from rim, flange and crossing, before ordering a set.',
  formula: 'L = √(R² + r² + o² − 2 R r cos(4 π X/n)) − s',
  inputs: {
    rim: quantity('R', 'radius at the nipple seat', millimetre, { above: 0 }),
    flange: quantity('r', 'radius of the spoke holes in the flange', millimetre, { above: 0 }),
    offset: quantity('o', 'flange from the middle of the rim', millimetre, { low: 0 }),
    crossing: quantity('X', 'spokes crossed', one, { low: 0, high: 8 }),
    spokes: quantity('n', 'spokes in the wheel', one, { low: 8, high: 80, whole: true }),
    hole: quantity('s', 'half the hole in the flange', millimetre, { optional: true, low: 0, high: 5 }),
  },
  outputs: {
    length: result('L', 'length', millimetre, 2, 'rim'),
    angle: result('', 'angle at the hub', degree, 2),
    factor: result('2 cos a', 'factor', one, 4),
  },
  range:
    'Straight tangent lacing; both flanges alike unless worked out for each. Leaving the hole out adds 1 to 1.3 mm.',
  source: 'Law of cosines, as in wheel building texts.',
  tables: ['values-spokes'],
  cautions: ['wheel-carries-you'],
  example: {
    given: { rim: '277.5 mm', flange: '29 mm', offset: '39 mm', crossing: '3', spokes: '36', hole: '1.3 mm' },
    gives: { length: '265.76 mm' },
  },
  work: (given) => {
    const [R, r, o] = [
      given.number('rim', millimetre),
      given.number('flange', millimetre),
      given.number('offset', millimetre),
    ];
    const angle = (4 * Math.PI * given.number('crossing', one)) / given.number('spokes', one);
    if (angle > Math.PI) given.doubt('calculation-out-of-range', 'so many spokes cannot be crossed in this wheel');
    const length =
      Math.sqrt(R ** 2 + r ** 2 + o ** 2 - 2 * R * r * Math.cos(angle)) - (given.maybe('hole', millimetre) ?? 0);
    return { length, angle: (angle * 180) / Math.PI, factor: 2 * Math.cos(angle) };
  },
});
