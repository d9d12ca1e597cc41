// Ring end gap, and what a bigger bore adds to it.
import { millimetre } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

export const ringGap = calculation({
  id: 'ring-gap',
  name: 'Ring end gap',
  purpose: 'What a bigger bore adds to the ring gap, and the gap that is common for a bore.',
  formula: 'Δg = π ΔD;  common gap 0.003 to 0.004 of the bore',
  inputs: {
    bore: quantity('D', 'bore', millimetre, { above: 0 }),
    growth: quantity('ΔD', 'bore over the size the gap was set in', millimetre, { optional: true, low: -1, high: 2 }),
    gap: quantity('g', 'gap in that size', millimetre, { optional: true, low: 0, high: 5 }),
  },
  outputs: {
    common: result('', 'common gap', millimetre, 2, 'bore'),
    added: result('Δg', 'added by the bore', millimetre, 4, 'growth'),
    gap: result('', 'gap in this bore', millimetre, 2, 'gap'),
  },
  range: 'The maker’s gap governs; the common gap is for cast rings of air-cooled engines (memory).',
  source: 'Geometry; rule of 0.003 to 0.004 mm for each mm from memory.',
  tables: ['values-wear-fits'],
  cautions: ['one-temperature'],
  example: {
    given: { bore: '50 mm', growth: '0.10 mm', gap: '0.20 mm' },
    gives: { common: '0.15 to 0.20 mm', added: '0.3142 mm', gap: '0.51 mm' },
  },
  work: (given) => {
    const bore = given.number('bore', millimetre);
    const growth = given.maybe('growth', millimetre);
    const gap = given.maybe('gap', millimetre);
    const added = growth === undefined ? undefined : Math.PI * growth;
    return {
      common: { value: 0.0035 * bore, low: 0.003 * bore, high: 0.004 * bore },
      added,
      gap: gap === undefined || added === undefined ? undefined : gap + added,
    };
  },
});
