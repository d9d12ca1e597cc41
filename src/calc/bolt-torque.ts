// Torque from preload, in the long form that keeps thread and under-head friction apart, and in the short form with a nut factor.
import { kilonewton, megapascal, millimetre, newtonMetre, one, squareMillimetre } from '../quantity/units.ts';
import { published } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result, words } from './input.ts';

/**
 * Tightening torque in N·m from preload in N, lengths in mm.
 * T = F · [P/2π + μ_t · d₂/(2 cos α/2) + μ_b · D_K/2]. VDI 2230 (small helix angle); α/2 is 30°, 27.5° for Whitworth form.
 * @example longTorque(20200, 1, 7.35, 0.12, 0.12, 10.3) // 25.99
 */
export function longTorque(
  preload: number,
  pitch: number,
  pitchDiameter: number,
  threadFriction: number,
  headFriction: number,
  headDiameter: number,
  angle: 55 | 60 = 60,
): number {
  const flank = Math.cos((angle * Math.PI) / 360);
  const arm =
    pitch / (2 * Math.PI) + (threadFriction * pitchDiameter) / (2 * flank) + (headFriction * headDiameter) / 2;
  return (preload * arm) / 1000;
}

export const boltTorque = calculation({
  id: 'bolt-torque',
  name: 'Torque from preload, long form',
  purpose: 'The torque that gives a preload, with the friction of the thread and of the face apart.',
  formula: 'T = F · [P/2π + μ_t · d₂/(2 cos 30°) + μ_b · D_K/2]',
  inputs: {
    preload: quantity('F', 'preload', kilonewton, { above: 0 }),
    pitch: quantity('P', 'pitch', millimetre, { above: 0 }),
    'pitch diameter': quantity('d₂', 'effective diameter', millimetre, { above: 0 }),
    'head diameter': quantity('D_K', 'mean diameter of the bearing face', millimetre, { above: 0 }),
    'thread friction': quantity('μ_t', 'friction in the thread', one, { low: 0, high: 0.6, usual: [0.05, 0.4] }),
    'head friction': quantity('μ_b', 'friction under the head', one, { low: 0, high: 0.6, usual: [0.05, 0.4] }),
  },
  outputs: { torque: result('T', 'torque', newtonMetre, 1) },
  range: '60° threads with a small helix angle.',
  source: 'VDI 2230:2003 (form from memory; agrees with its printed tables within 0.9 %).',
  tables: ['values-bolt-torque'],
  cautions: ['book-torque', 'dry-thread-figure', 'aluminium-thread'],
  example: {
    given: {
      preload: '20.2 kN',
      pitch: '1 mm',
      'pitch diameter': '7.35 mm',
      'head diameter': '10.3 mm',
      'thread friction': '0.12',
      'head friction': '0.12',
    },
    gives: { torque: '26.0 N·m' },
  },
  work: (given) => ({
    torque: longTorque(
      given.number('preload', kilonewton) * 1000,
      given.number('pitch', millimetre),
      given.number('pitch diameter', millimetre),
      given.number('thread friction', one),
      given.number('head friction', one),
      given.number('head diameter', millimetre),
    ),
  }),
});

export const nutFactorTorque = calculation({
  id: 'nut-factor-torque',
  name: 'Torque from preload, short form',
  purpose: 'A quick torque for a preload by one published factor for the surface.',
  formula: 'T = K · F · d',
  inputs: {
    preload: quantity('F', 'preload', kilonewton, { above: 0 }),
    diameter: quantity('d', 'nominal diameter', millimetre, { above: 0 }),
    factor: quantity('K', 'nut factor', one, { optional: true, above: 0, high: 0.6, usual: [0.08, 0.35] }),
    surface: words('', 'surface', {
      optional: true,
      among: ['black', 'zinc plated', 'lubricated', 'cadmium plated', 'anti-seize'],
    }),
  },
  outputs: { torque: result('T', 'torque', newtonMetre, 2) },
  range:
    'Hand tightening scatters the preload by a quarter either way for one torque; the factor differs between books.',
  source: 'Shigley, Mechanical Engineering Design, equation 8-27 and table 8-15; scatter of NASA TM-106943.',
  tables: ['nut-factors', 'values-bolt-torque'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: { given: { preload: '10 kN', diameter: '8 mm', surface: 'zinc plated' }, gives: { torque: '16.00 N·m' } },
  work: (given) => {
    const row = given.words('surface');
    const listed = row === '' ? undefined : published('nut-factors', row, 'K', one);
    if (listed !== undefined) given.use('K', 'nut factor, ' + row, listed);
    const factor = given.maybe('factor', one) ?? listed?.quantity;
    if (factor === undefined) {
      given.doubt('calculation-value-missing', 'neither a nut factor nor a surface is given');
      return {};
    }
    const torque = factor * given.number('preload', kilonewton) * given.number('diameter', millimetre);
    return { torque };
  },
});

/**
 * Greatest preload in N that leaves a bolt at a share of yield under tension and twist together, lengths in mm, stress in MPa.
 * F = ν · R · Aₛ / √{1 + 3 [1.5 (d₂/d₀) (P/(π d₂) + 1.155 μ)]²}, d₀ = (d₂ + d₃)/2. VDI 2230.
 */
export function yieldPreload(
  share: number,
  yielding: number,
  area: number,
  pitchDiameter: number,
  rootDiameter: number,
  pitch: number,
  friction: number,
): number {
  const mean = (pitchDiameter + rootDiameter) / 2;
  const twist = 1.5 * (pitchDiameter / mean) * (pitch / (Math.PI * pitchDiameter) + 1.155 * friction);
  return (share * yielding * area) / Math.sqrt(1 + 3 * twist ** 2);
}

export const assemblyPreload = calculation({
  id: 'assembly-preload',
  name: 'Greatest assembly preload',
  purpose: 'The preload at which tension and twist together reach 90 % of yield.',
  formula: 'F = 0.9 R_p · Aₛ / √{1 + 3 [1.5 (d₂/d₀) (P/(π d₂) + 1.155 μ)]²}',
  inputs: {
    yield: quantity('R_p', 'yield strength', megapascal, { above: 0 }),
    'stress area': quantity('Aₛ', 'stress area', squareMillimetre, { above: 0 }),
    'pitch diameter': quantity('d₂', 'effective diameter', millimetre, { above: 0 }),
    'root diameter': quantity('d₃', 'core diameter', millimetre, { above: 0 }),
    pitch: quantity('P', 'pitch', millimetre, { above: 0 }),
    friction: quantity('μ', 'friction in the thread', one, { low: 0, high: 0.6 }),
    share: quantity('ν', 'share of yield used', one, { optional: true, above: 0, high: 1 }),
  },
  outputs: { preload: result('F', 'preload', kilonewton, 2) },
  range: 'Steel and stainless bolts; share of yield 0.9 unless given.',
  source: 'VDI 2230:2003 (form from memory; agrees with its printed tables within 0.3 %, A2-70 within 1.1 %).',
  tables: ['values-bolt-torque'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: {
    given: {
      yield: '640 MPa',
      'stress area': '39.17 mm²',
      'pitch diameter': '7.35 mm',
      'root diameter': '6.773 mm',
      pitch: '1 mm',
      friction: '0.10',
    },
    gives: { preload: '20.73 kN' },
  },
  work: (given) => ({
    preload:
      yieldPreload(
        given.maybe('share', one) ?? 0.9,
        given.number('yield', megapascal),
        given.number('stress area', squareMillimetre),
        given.number('pitch diameter', millimetre),
        given.number('root diameter', millimetre),
        given.number('pitch', millimetre),
        given.number('friction', one),
      ) / 1000,
  }),
});
