// Fork oil: how the level goes with the amount.
import { millilitre, millimetre } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

export const forkOil = calculation({
  id: 'fork-oil',
  name: 'Fork oil level',
  purpose: 'How the oil level changes with the amount, so that a dried fork is filled by level.',
  formula: 'Δh = ΔV/(π/4 · (D² − d²))',
  inputs: {
    amount: quantity('ΔV', 'oil added or taken', millilitre),
    tube: quantity('D', 'inner diameter of the tube', millimetre, { above: 0, high: 80 }),
    inside: quantity('d', 'solid part inside at that height (damper rod, spring taken as out)', millimetre, {
      optional: true,
      low: 0,
      high: 60,
    }),
  },
  outputs: {
    level: result('Δh', 'level moves by', millimetre, 1, 'tube'),
    'per ml': result('', 'for each ml', millimetre, 2, 'tube'),
  },
  range: 'Spring out, fork compressed, as the book says. The maker’s amount or level governs; the same in both legs.',
  source: 'Geometry.',
  tables: [],
  cautions: ['loaded-spring', 'on-the-stand'],
  example: { given: { amount: '10 ml', tube: '31 mm' }, gives: { level: '13.2 mm', 'per ml': '1.32 mm' } },
  work: (given) => {
    const [D, d] = [given.number('tube', millimetre), given.maybe('inside', millimetre) ?? 0];
    if (d >= D) given.doubt('calculation-out-of-range', 'what is inside must be smaller than the tube');
    const each = d >= D ? Number.NaN : 1000 / ((Math.PI / 4) * (D ** 2 - d ** 2));
    return d >= D ? {} : { level: each * given.number('amount', millilitre), 'per ml': each };
  },
});
