// Bore and piston: taper, out-of-round, clearance, and the next oversize that cleans up.
import { millimetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { list, quantity, result, saying, words } from './input.ts';

export const boreWear = calculation({
  id: 'bore-wear',
  name: 'Taper and out-of-round',
  purpose: 'Taper and out-of-round from the bore gauge, by the rule that the book uses, which is printed.',
  formula: 'taper = top − bottom;  out-of-round = fore-aft − across (diameters); wear = greatest − standard',
  inputs: {
    'fore-aft': list('', 'diameters fore and aft, from top to bottom', millimetre, { above: 0 }),
    across: list('', 'diameters across, from top to bottom', millimetre, { above: 0 }),
    standard: quantity('', 'standard size', millimetre, { optional: true, above: 0 }),
    rule: words('', 'rule of the book', { optional: true, among: ['difference', 'half the difference'] }),
  },
  outputs: {
    taper: result('', 'taper', millimetre, 3, 'fore-aft'),
    'out-of-round': result('', 'out-of-round', millimetre, 3, 'fore-aft'),
    wear: result('', 'wear', millimetre, 3, 'fore-aft'),
    rule: saying('rule used'),
  },
  range:
    'Makers differ: some take the difference of diameters, some half of it. Without a rule the difference is taken.',
  source: 'Common practice; the rule is the maker’s.',
  tables: [],
  cautions: ['one-temperature'],
  example: {
    given: { 'fore-aft': '50.06 mm; 50.04 mm; 50.02 mm', across: '50.05 mm; 50.03 mm; 50.02 mm', standard: '50.00 mm' },
    gives: { taper: '0.040 mm', 'out-of-round': '0.010 mm', wear: '0.060 mm', rule: 'difference of diameters' },
  },
  work: (given) => {
    const [fore, across] = [given.list('fore-aft', millimetre), given.list('across', millimetre)];
    if (fore.length !== across.length) {
      given.doubt('calculation-value-wrong', 'fore-aft and across must be measured at the same heights');
      return {};
    }
    const half = given.words('rule') === 'half the difference';
    const share = half ? 0.5 : 1;
    const range = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
    const round = Math.max(...fore.map((value, index) => Math.abs(value - (across[index] ?? value))));
    const standard = given.maybe('standard', millimetre);
    const wear = standard === undefined ? undefined : Math.max(...fore, ...across) - standard;
    return {
      // One height says nothing of taper.
      taper: fore.length < 2 ? undefined : share * Math.max(range(fore), range(across)),
      'out-of-round': share * round,
      wear,
      rule: half ? 'half the difference of diameters' : 'difference of diameters',
    };
  },
});

export const pistonClearance = calculation({
  id: 'piston-clearance',
  name: 'Piston clearance',
  purpose: 'The clearance of a piston in its bore, and for each part of the bore.',
  formula: 'c = bore − skirt',
  inputs: {
    bore: quantity('D', 'bore, smallest', millimetre, { above: 0 }),
    skirt: quantity('d', 'piston skirt, where the maker measures it', millimetre, { above: 0 }),
  },
  outputs: {
    clearance: result('c', 'clearance', millimetre, 3, 'bore'),
    'per mm': result('c/D', 'for each mm of bore', one, 5),
  },
  range: 'Bore and piston at one temperature; the skirt at the maker’s height.',
  source: 'A maker’s service manual (method).',
  tables: ['values-wear-fits'],
  cautions: ['bore-to-the-piston', 'one-temperature'],
  example: { given: { bore: '50.02 mm', skirt: '49.96 mm' }, gives: { clearance: '0.060 mm', 'per mm': '0.00120' } },
  work: (given) => {
    const [bore, skirt] = [given.number('bore', millimetre), given.number('skirt', millimetre)];
    if (bore <= skirt) given.doubt('calculation-unlikely', 'the piston measures larger than its bore');
    return { clearance: bore - skirt, 'per mm': (bore - skirt) / bore };
  },
});

export const nextOversize = calculation({
  id: 'next-oversize',
  name: 'Next oversize that cleans up',
  purpose: 'The first oversize whose bore removes all wear and scoring with some to spare.',
  formula: 'D_k = D₀ + k · step ≥ D_max + 2 (score + allowance)',
  inputs: {
    largest: quantity('D_max', 'largest bore measured', millimetre, { above: 0 }),
    standard: quantity('D₀', 'standard bore', millimetre, { above: 0 }),
    step: quantity('', 'step of the oversizes (0.25 mm unless given)', millimetre, {
      optional: true,
      above: 0,
      high: 2,
    }),
    oversizes: list('', 'oversizes to be had', millimetre, { optional: true, above: 0, high: 5 }),
    score: quantity('', 'depth of the deepest score', millimetre, { optional: true, low: 0, high: 1 }),
    allowance: quantity('', 'to be bored and honed on each side (0.05 mm unless given)', millimetre, {
      optional: true,
      low: 0,
      high: 1,
    }),
  },
  outputs: {
    oversize: result('', 'oversize', millimetre, 2, 'largest'),
    bore: result('D', 'bore', millimetre, 2, 'largest'),
    needed: result('', 'least bore that cleans up', millimetre, 3, 'largest'),
  },
  range: 'The allowance is the reborer’s to say; wear on one side needs more.',
  source: 'Common practice.',
  tables: [],
  cautions: ['bore-to-the-piston', 'one-temperature'],
  example: {
    given: { largest: '50.18 mm', standard: '50.00 mm' },
    gives: { oversize: '0.50 mm', bore: '50.50 mm', needed: '50.280 mm' },
  },
  work: (given) => {
    const [largest, standard] = [given.number('largest', millimetre), given.number('standard', millimetre)];
    const needed =
      largest + 2 * ((given.maybe('score', millimetre) ?? 0) + (given.maybe('allowance', millimetre) ?? 0.05));
    const step = given.maybe('step', millimetre) ?? 0.25;
    const listed = given.list('oversizes', millimetre).toSorted((a, b) => a - b);
    const offered = listed.length > 0 ? listed : [1, 2, 3, 4].map((k) => k * step);
    const oversize = offered.find((size) => standard + size >= needed - 1e-9);
    if (oversize === undefined)
      given.doubt('calculation-out-of-range', 'no oversize to be had cleans up this bore: a liner or another barrel');
    return { needed, oversize, bore: oversize === undefined ? undefined : standard + oversize };
  },
});
