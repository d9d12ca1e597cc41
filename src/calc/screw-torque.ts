// The full screw formula, the nut factor it amounts to, and the turn after snug: the textbook forms beside VDI's.
import { degree, kilonewton, megapascal, millimetre, newtonMetre, one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

/** Nut factor by the full screw formula. K = (d_p/2d)(tan ψ + μ sec α)/(1 − μ tan ψ sec α) + 0.625 μ_c, tan ψ = P/(π d_p), α = 30°. */
export function screwNutFactor(
  diameter: number,
  pitch: number,
  meanDiameter: number,
  friction: number,
  collar: number,
): number {
  const lead = pitch / (Math.PI * meanDiameter);
  const secant = 1 / Math.cos(Math.PI / 6);
  return (
    (meanDiameter / (2 * diameter)) * ((lead + friction * secant) / (1 - friction * lead * secant)) + 0.625 * collar
  );
}

/** Nut factor of MIL-HDBK-60, 100.5.1. K = [P/2π + μ_t (d − 0.75 P sin 60°)/(2 sin 60°) + 0.625 μ_c d]/d. */
export function handbookNutFactor(diameter: number, pitch: number, friction: number, collar: number): number {
  const sine = Math.sin(Math.PI / 3);
  return (
    (pitch / (2 * Math.PI) + (0.5 * friction * (diameter - 0.75 * pitch * sine)) / sine + 0.625 * collar * diameter) /
    diameter
  );
}

const shared = {
  diameter: quantity('d', 'nominal diameter', millimetre, { above: 0 }),
  pitch: quantity('P', 'pitch', millimetre, { above: 0 }),
  'thread friction': quantity('μ', 'friction in the thread', one, { low: 0, high: 0.6 }),
  'collar friction': quantity('μ_c', 'friction of the collar', one, { low: 0, high: 0.6 }),
} as const;

export const screwTorque = calculation({
  id: 'screw-torque',
  name: 'Torque by the full screw formula',
  purpose: 'Torque for a preload without the small-angle simplification, and the nut factor it amounts to.',
  formula: 'T = K F d;  K = (d_p/2d)(tan ψ + μ sec α)/(1 − μ tan ψ sec α) + 0.625 μ_c',
  inputs: {
    ...shared,
    preload: quantity('F', 'preload', kilonewton, { above: 0 }),
    'pitch diameter': quantity('d_p', 'effective diameter', millimetre, { optional: true, above: 0 }),
  },
  outputs: {
    torque: result('T', 'torque', newtonMetre, 2),
    factor: result('K', 'nut factor', one, 5),
    'handbook factor': result('K', 'nut factor by MIL-HDBK-60', one, 5),
  },
  range: '60° threads; the collar has a mean diameter of 1.25 d. Without an effective diameter d − 0.6495 P is taken.',
  source: 'Shigley, equation 8-26; NASA TM-106943, equation 2; MIL-HDBK-60, 100.5.1.',
  tables: ['values-bolt-torque'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: {
    given: {
      diameter: '0.75 in',
      pitch: '0.0625 in',
      'thread friction': '0.15',
      'collar friction': '0.15',
      preload: '25 kN',
    },
    gives: { factor: '0.18939', 'handbook factor': '0.18893' },
  },
  work: (given) => {
    const diameter = given.number('diameter', millimetre);
    const pitch = given.number('pitch', millimetre);
    const frictions = [given.number('thread friction', one), given.number('collar friction', one)] as const;
    const mean = given.maybe('pitch diameter', millimetre) ?? diameter - 0.649519 * pitch;
    const factor = screwNutFactor(diameter, pitch, mean, ...frictions);
    return {
      factor,
      torque: factor * given.number('preload', kilonewton) * diameter,
      'handbook factor': handbookNutFactor(diameter, pitch, ...frictions),
    };
  },
});

export const turnAngle = calculation({
  id: 'turn-angle',
  name: 'Turn after snug',
  purpose: 'The angle that stretches a bolt to a preload, to judge an angle given in a book.',
  formula: 'θ = 360° · σ L/(E P)',
  inputs: {
    stress: quantity('σ', 'stress from the preload, F/Aₛ', megapascal, { above: 0 }),
    grip: quantity('L', 'stretched length', millimetre, { above: 0 }),
    modulus: quantity('E', 'modulus of elasticity (steel 205 GPa)', megapascal, { optional: true, above: 0 }),
    pitch: quantity('P', 'pitch', millimetre, { above: 0 }),
  },
  outputs: { turn: result('θ', 'turn', degree, 2) },
  range: 'Stretch of the bolt only; the parts are taken as rigid, so a real joint needs more.',
  source: 'Wentzell, Machine Design, example 6.2.',
  tables: ['values-bolt-torque'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: {
    given: { stress: '72.25 ksi', grip: '5 in', modulus: '30000 ksi', pitch: '0.1 in' },
    gives: { turn: '43.35°' },
  },
  work: (given) => ({
    turn:
      (360 * given.number('stress', megapascal) * given.number('grip', millimetre)) /
      ((given.maybe('modulus', megapascal) ?? 205_000) * given.number('pitch', millimetre)),
  }),
});

export const preloadBand = calculation({
  id: 'preload-band',
  name: 'Preload that a torque gives',
  purpose: 'Between what limits the preload lies when a bolt is tightened by hand to a torque.',
  formula: 'F_max = T/(K d) · (1 + u);  F_min = T/(K d) · (1 − u) · 0.95',
  inputs: {
    torque: quantity('T', 'torque', newtonMetre, { above: 0 }),
    factor: quantity('K', 'nut factor', one, { above: 0, high: 0.6 }),
    diameter: quantity('d', 'nominal diameter', millimetre, { above: 0 }),
    scatter: quantity('u', 'scatter of hand tightening', one, { optional: true, low: 0, high: 0.6 }),
  },
  outputs: { preload: result('F', 'preload', kilonewton, 2) },
  range: 'Hand tightening, a quarter either way unless given; 5 % is lost as the faces bed in.',
  source: 'NASA TM-106943.',
  tables: ['values-bolt-torque'],
  cautions: ['book-torque', 'dry-thread-figure'],
  example: { given: { torque: '25 N·m', factor: '0.2', diameter: '8 mm' }, gives: { preload: '11.13 to 19.53 kN' } },
  work: (given) => {
    const middle =
      given.number('torque', newtonMetre) / (given.number('factor', one) * given.number('diameter', millimetre));
    const scatter = given.maybe('scatter', one) ?? 0.25;
    return { preload: { value: middle, low: middle * (1 - scatter) * 0.95, high: middle * (1 + scatter) } };
  },
});
