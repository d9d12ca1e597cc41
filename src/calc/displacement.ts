// Displacement: what the pistons sweep.
import { cubicCentimetre, millimetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

/**
 * Swept volume of all cylinders, in cubic centimetres.
 * V = π/4 · b² · s · n, bore b and stroke s in millimetres. Geometry; any round bore.
 * @example sweptVolume(50, 44.5, 2) // 174.75
 */
export function sweptVolume(bore: number, stroke: number, cylinders: number): number {
  return ((Math.PI / 4) * bore ** 2 * stroke * cylinders) / 1000;
}

export const displacement = calculation({
  id: 'displacement',
  name: 'Displacement',
  purpose: 'The volume that the pistons sweep, for papers, jetting and the compression ratio.',
  formula: 'V = π/4 · b² · s · n',
  inputs: {
    bore: quantity('b', 'bore', millimetre, { above: 0, usual: [25, 130] }),
    stroke: quantity('s', 'stroke', millimetre, { above: 0, usual: [25, 140] }),
    cylinders: quantity('n', 'cylinders', one, { low: 1, high: 12, whole: true }),
  },
  outputs: {
    displacement: result('V', 'displacement', cubicCentimetre, 1),
    'per cylinder': result('V₁', 'of one cylinder', cubicCentimetre, 2),
  },
  range: 'Round bores.',
  source: 'Geometry; as in Mathur and Sharma, Internal Combustion Engines.',
  tables: ['values-engine'],
  cautions: [],
  example: {
    given: { bore: '50 mm', stroke: '44.5 mm', cylinders: '2' },
    gives: { displacement: '174.8 cc', 'per cylinder': '87.38 cc' },
  },
  work: (given) => {
    const single = sweptVolume(given.number('bore', millimetre), given.number('stroke', millimetre), 1);
    return { displacement: single * given.number('cylinders', one), 'per cylinder': single };
  },
});
