// Piston speed, mean and greatest.
import { metrePerSecond, millimetre, revolutionsPerMinute } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

export const pistonSpeed = calculation({
  id: 'piston-speed',
  name: 'Piston speed',
  purpose: 'Mean and greatest piston speed, to judge an engine speed for running-in.',
  formula: 'v_m = 2 s N;  v = ω r (sin a + sin 2a/(2 n)), greatest at cos a = (−n + √(n² + 8))/4',
  inputs: {
    stroke: quantity('s', 'stroke', millimetre, { above: 0 }),
    rod: quantity('l', 'rod, between centres', millimetre, { optional: true, above: 0 }),
    revolutions: quantity('N', 'engine speed', revolutionsPerMinute, { above: 0 }),
  },
  outputs: { mean: result('v_m', 'mean', metrePerSecond, 2), greatest: result('v', 'greatest', metrePerSecond, 2) },
  range: 'The greatest speed by the usual two-term form (rod at least 1.2 strokes).',
  source: 'Khurmi and Gupta, Theory of Machines, chapter 15.',
  tables: ['values-engine'],
  cautions: ['running-engine'],
  example: {
    given: { stroke: '600 mm', rod: '1000 mm', revolutions: '200 rpm' },
    gives: { mean: '4.00 m/s', greatest: '6.54 m/s' },
  },
  work: (given) => {
    const stroke = given.number('stroke', millimetre) / 1000;
    const rod = given.maybe('rod', millimetre);
    const turns = given.number('revolutions', revolutionsPerMinute) / 60;
    const mean = 2 * stroke * turns;
    if (rod === undefined) return { mean };
    const n = rod / 1000 / (stroke / 2);
    const cosine = (-n + Math.sqrt(n ** 2 + 8)) / 4;
    const sine = Math.sqrt(1 - cosine ** 2);
    return { mean, greatest: 2 * Math.PI * turns * (stroke / 2) * (sine + (sine * cosine) / n) };
  },
});
