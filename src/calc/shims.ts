// Shims: for a clearance, and for the end float of a shaft.
import { millimetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying, words } from './input.ts';

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
    exact: result('', 'by the formula', millimetre, 3, 'measured'),
    shim: result('', 'shim to fit', millimetre, 3, 'measured'),
    clearance: result('', 'clearance then', millimetre, 3, 'measured'),
    rounding: saying('rounding used'),
  },
  range:
    'Shims that take up the measured gap. Where a thinner shim gives the larger clearance, round to the larger clearance for exhaust valves.',
  source: 'A maker’s shim chart and formula; another maker’s thrust shim table.',
  tables: ['values-wear-fits'],
  cautions: ['one-temperature'],
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
    const sum =
      (given.maybe('old', millimetre) ?? 0) + given.number('measured', millimetre) - given.number('wanted', millimetre);
    // Sums of decimals come out a hair beside nothing; nothing is a right answer: no shim.
    const exact = Math.abs(sum) < 1e-9 ? 0 : sum;
    const step = given.maybe('step', millimetre);
    if (exact === 0) given.remark('No shim: without one it comes out as wanted.');
    if (exact < 0) given.doubt('calculation-out-of-range', 'no shim is thin enough: measure again');
    if (step === undefined || exact < 0) return { exact: exact < 0 ? undefined : exact };
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
    total: result('', 'shims in all', millimetre, 2, 'measured'),
    left: result('', 'on the left', millimetre, 2, 'measured'),
    right: result('', 'on the right', millimetre, 2, 'measured'),
  },
  range: 'Float measured with the cases tight and the gasket fitted.',
  source: 'Geometry; common practice.',
  tables: [],
  cautions: ['one-temperature'],
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
