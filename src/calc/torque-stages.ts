// Stages of a torque, where the book gives only the last value.
import { newtonMetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

/** Shares of the last value at each stage, in equal steps. */
export function stageShares(stages: number): readonly number[] {
  return Array.from({ length: stages }, (_, index) => (index + 1) / stages);
}

export const torqueStages = calculation({
  id: 'torque-stages',
  name: 'Stages of a torque',
  purpose: 'The values to go through in order, so that a head or cover is drawn down evenly.',
  formula: 'T_i = T · i/n',
  inputs: {
    torque: quantity('T', 'last value', newtonMetre, { above: 0 }),
    stages: quantity('n', 'stages', one, { optional: true, low: 1, high: 3, whole: true }),
  },
  outputs: {
    first: result('T₁', 'first stage', newtonMetre, 1, 'torque'),
    second: result('T₂', 'second stage', newtonMetre, 1, 'torque'),
    last: result('T', 'last stage', newtonMetre, 1, 'torque'),
  },
  range: 'The maker’s stages govern. Two stages unless given; each stage all round in the order of tightening.',
  source: 'Common practice of the trade.',
  tables: [],
  cautions: ['book-torque', 'head-cold'],
  example: {
    given: { torque: '24 N·m', stages: '3' },
    gives: { first: '8.0 N·m', second: '16.0 N·m', last: '24.0 N·m' },
  },
  work: (given) => {
    const torque = given.number('torque', newtonMetre);
    const before = stageShares(given.maybe('stages', one) ?? 2).slice(0, -1);
    return {
      first: before[0] === undefined ? undefined : torque * before[0],
      second: before[1] === undefined ? undefined : torque * before[1],
      last: torque,
    };
  },
});
