// Wear and fits: bore and piston, rings, shims.
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
    taper: result('', 'taper', millimetre, 3),
    'out-of-round': result('', 'out-of-round', millimetre, 3),
    wear: result('', 'wear', millimetre, 3),
    rule: saying('rule used'),
  },
  range:
    'Makers differ: some take the difference of diameters, some half of it. Without a rule the difference is taken.',
  source: 'Common practice; the rule is the maker’s.',
  tables: [],
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
      taper: share * Math.max(range(fore), range(across)),
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
    clearance: result('c', 'clearance', millimetre, 3),
    'per mm': result('c/D', 'for each mm of bore', one, 5),
  },
  range: 'Bore and piston at one temperature; the skirt at the maker’s height.',
  source: 'A maker’s service manual (method).',
  tables: ['values-wear-fits'],
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
    oversize: result('', 'oversize', millimetre, 2),
    bore: result('D', 'bore', millimetre, 2),
    needed: result('', 'least bore that cleans up', millimetre, 3),
  },
  range: 'The allowance is the reborer’s to say; wear on one side needs more.',
  source: 'Common practice.',
  tables: [],
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
    common: result('', 'common gap', millimetre, 2),
    added: result('Δg', 'added by the bore', millimetre, 4),
    gap: result('', 'gap in this bore', millimetre, 2),
  },
  range: 'The maker’s gap governs; the common gap is for cast rings of air-cooled engines (memory).',
  source: 'Geometry; rule of 0.003 to 0.004 mm for each mm from memory.',
  tables: ['values-wear-fits'],
  example: {
    given: { bore: '50 mm', growth: '0.10 mm', gap: '0.20 mm' },
    gives: { common: '0.15 to 0.20 mm', added: '0.3142 mm', gap: '0.51 mm' },
  },
  work: (given) => {
    const bore = given.number('bore', millimetre);
    const added = Math.PI * (given.maybe('growth', millimetre) ?? 0);
    const gap = given.maybe('gap', millimetre);
    return {
      common: { value: 0.0035 * bore, low: 0.003 * bore, high: 0.004 * bore },
      added,
      gap: gap === undefined ? undefined : gap + added,
    };
  },
});

export const shimChoice = calculation({
  id: 'shim',
  name: 'Shim to fit',
  purpose: 'The shim that brings a clearance or end float to the wanted value, from the sizes to be had.',
  formula: 'new = old + measured − wanted',
  inputs: {
    old: quantity('', 'shim fitted now (0 when none)', millimetre, { optional: true, low: 0 }),
    measured: quantity('', 'clearance or float measured', millimetre, { low: -2, high: 10 }),
    wanted: quantity('', 'wanted (the middle of the range)', millimetre, { low: 0, high: 10 }),
    step: quantity('', 'step of the sizes', millimetre, { optional: true, above: 0, high: 1 }),
    rounding: words('', 'rounding', { optional: true, among: ['nearest', 'larger clearance', 'smaller clearance'] }),
  },
  outputs: {
    exact: result('', 'by the formula', millimetre, 3),
    shim: result('', 'shim to fit', millimetre, 3),
    clearance: result('', 'clearance then', millimetre, 3),
    rounding: saying('rounding used'),
  },
  range:
    'Shims that take up the measured gap. Where a thinner shim gives the larger clearance, round to the larger clearance for exhaust valves.',
  source: 'A maker’s shim chart and formula; another maker’s thrust shim table.',
  tables: ['values-wear-fits'],
  example: {
    given: { old: '2.52 mm', measured: '0.30 mm', wanted: '0.37 mm', step: '0.02 mm' },
    gives: {
      exact: '2.450 mm',
      shim: '2.460 mm',
      clearance: '0.360 mm',
      rounding: 'nearest (a tie goes to the thicker shim)',
    },
  },
  work: (given) => {
    const exact =
      (given.maybe('old', millimetre) ?? 0) + given.number('measured', millimetre) - given.number('wanted', millimetre);
    const step = given.maybe('step', millimetre);
    if (exact <= 0) given.doubt('calculation-out-of-range', 'no shim is thin enough: measure again');
    if (step === undefined || exact <= 0) return { exact: exact <= 0 ? undefined : exact };
    const kind = given.words('rounding');
    const steps = exact / step;
    const count =
      kind === 'larger clearance'
        ? Math.floor(steps + 1e-9)
        : kind === 'smaller clearance'
          ? Math.ceil(steps - 1e-9)
          : Math.floor(steps + 0.5 + 1e-9);
    const shim = count * step;
    const clearance = given.number('wanted', millimetre) + exact - shim;
    return {
      exact,
      shim,
      clearance,
      rounding: kind === '' || kind === 'nearest' ? 'nearest (a tie goes to the thicker shim)' : kind,
    };
  },
});

export const endFloat = calculation({
  id: 'end-float',
  name: 'End float shimming',
  purpose: 'The shims for both ends of a shaft, so that it floats as wanted and sits in the middle.',
  formula: 'total = measured − wanted;  each side = total/2 ± offset',
  inputs: {
    measured: quantity('', 'float measured without shims', millimetre, { above: 0, high: 20 }),
    wanted: quantity('', 'float wanted', millimetre, { low: 0, high: 5 }),
    offset: quantity('', 'shaft must go to the left by', millimetre, { optional: true, low: -5, high: 5 }),
    sides: quantity('', 'sides that are shimmed', one, { optional: true, low: 1, high: 2, whole: true }),
  },
  outputs: {
    total: result('', 'shims in all', millimetre, 2),
    left: result('', 'on the left', millimetre, 2),
    right: result('', 'on the right', millimetre, 2),
  },
  range: 'Float measured with the cases tight and the gasket fitted.',
  source: 'Geometry; common practice.',
  tables: [],
  example: {
    given: { measured: '0.85 mm', wanted: '0.15 mm' },
    gives: { total: '0.70 mm', left: '0.35 mm', right: '0.35 mm' },
  },
  work: (given) => {
    const total = given.number('measured', millimetre) - given.number('wanted', millimetre);
    if (total < 0) given.doubt('calculation-out-of-range', 'there is less float than wanted already');
    if (total < 0) return {};
    if (given.maybe('sides', one) === 1) return { total, right: total };
    const offset = given.maybe('offset', millimetre) ?? 0;
    return { total, left: total / 2 - offset, right: total / 2 + offset };
  },
});
