// What a thread carries before it strips: shear areas from the limits of size, and the engagement that is enough.
import { roundTo } from '../quantity/decimal.ts';
import { megapascal, millimetre, newton, one, squareMillimetre } from '../quantity/units.ts';
import { cellNumber, published, table } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result, words } from './input.ts';
import { readThread } from './thread.ts';
import type { Thread } from './thread.ts';
import { minorDiameter, pitchDiameter, stressArea } from './thread-geometry.ts';

/** Limits of size that matter for shear, mm: bolt least major and pitch diameter, nut greatest minor and pitch diameter. */
export interface ShearLimits {
  readonly boltMajor: number;
  readonly boltPitch: number;
  readonly nutMinor: number;
  readonly nutPitch: number;
}

/** ISO 965-1 6g/6H from the table; undefined for a pitch and diameter it does not hold. */
function metricLimits(thread: Thread): ShearLimits | undefined {
  const row = table('thread-tolerances').rows.find((one) => {
    const cell = (name: string): number => Number(one.cells[name]);
    return cell('pitch') === thread.pitch && thread.diameter > cell('over') && thread.diameter <= cell('to');
  });
  if (row === undefined) return undefined;
  const microns = (name: string): number => (cellNumber('thread-tolerances', row.id, name) ?? 0) / 1000;
  const deviation = microns('deviation g');
  // The standard prints basic diameters to a micrometre, and its limits are built on the printed ones.
  const pitchDiameterPrinted = roundTo(pitchDiameter(thread), 3);
  return {
    boltMajor: thread.diameter - deviation - microns('major tolerance 6'),
    boltPitch: pitchDiameterPrinted - deviation - microns('bolt pitch diameter tolerance 6'),
    nutMinor: roundTo(minorDiameter(thread), 3) + microns('nut minor diameter tolerance 6'),
    nutPitch: pitchDiameterPrinted + microns('nut pitch diameter tolerance 6'),
  };
}

/** ASME B1.1 class 2A/2B by its formulas (from memory), used for other inch threads and for odd metric pitches as well. */
function formulaLimits(thread: Thread): ShearLimits {
  const d = thread.diameter / 25.4;
  const p = thread.pitch / 25.4;
  const pitchTolerance = 0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(d) + 0.015 * Math.cbrt(p ** 2);
  const allowance = 0.3 * pitchTolerance;
  const minorTolerance = Math.max(0.25 * p - 0.4 * p ** 2, 0);
  return {
    boltMajor: thread.diameter - (allowance + 0.06 * Math.cbrt(p ** 2)) * 25.4,
    boltPitch: pitchDiameter(thread) - (allowance + pitchTolerance) * 25.4,
    // The standard prints the minor diameter of the nut to a thousandth of an inch.
    nutMinor: roundTo(minorDiameter(thread) / 25.4 + minorTolerance, 3) * 25.4,
    nutPitch: pitchDiameter(thread) + 1.3 * pitchTolerance * 25.4,
  };
}

export function shearLimits(thread: Thread): ShearLimits {
  return (thread.series === 'M' ? metricLimits(thread) : undefined) ?? formulaLimits(thread);
}

/**
 * Shear area of the female thread per millimetre of engagement, mm. π · d_min · (1/P) · [P/2 + tan(α/2) · (d_min − D₂max)]
 * (FED-STD-H28/2B; α the included angle).
 */
export function femaleShear(thread: Thread, limits: ShearLimits): number {
  const slope = Math.tan((thread.angle * Math.PI) / 360);
  return (
    (Math.PI / thread.pitch) * limits.boltMajor * (thread.pitch / 2 + slope * (limits.boltMajor - limits.nutPitch))
  );
}

/** Shear area of the bolt's thread per millimetre of engagement, mm (FED-STD-H28/2B). */
export function boltShear(thread: Thread, limits: ShearLimits): number {
  const slope = Math.tan((thread.angle * Math.PI) / 360);
  return (Math.PI / thread.pitch) * limits.nutMinor * (thread.pitch / 2 + slope * (limits.boltPitch - limits.nutMinor));
}

export const threadStrip = calculation({
  id: 'thread-strip',
  name: 'Thread strip strength',
  purpose: 'The pull at which a tapped thread strips, and the engagement at which it outlasts the bolt.',
  formula: 'A = π · L/P · d_min · (P/2 + tan(α/2) · (d_min − D₂max));  F = τ · A;  τ = 0.6 R_m',
  inputs: {
    thread: words('', 'thread'),
    into: words('', 'cut in', { optional: true }),
    engagement: quantity('L', 'length of engagement of full threads', millimetre, { optional: true, above: 0 }),
    'breaking load': quantity('F_m', 'breaking load of the bolt', newton, { optional: true, above: 0 }),
    tensile: quantity('R_m', 'tensile strength of the female thread', megapascal, { optional: true, above: 0 }),
    'bolt tensile': quantity('R_b', 'tensile strength of the bolt', megapascal, { optional: true, above: 0 }),
    'shear share': quantity('τ/R_m', 'shear strength over tensile strength', one, {
      optional: true,
      above: 0,
      high: 1,
    }),
  },
  outputs: {
    'female shear area': result('A/L', 'shear area of the female thread per mm', squareMillimetre, 3),
    'bolt shear area': result('A/L', 'shear area of the bolt thread per mm', squareMillimetre, 3),
    'strip load': result('F', 'strip load of the female thread', newton, 0),
    'bolt major diameter': result('d_min', 'least major diameter of the bolt', millimetre, 3),
    'bolt pitch diameter': result('d₂min', 'least pitch diameter of the bolt', millimetre, 3),
    'nut minor diameter': result('D₁max', 'greatest minor diameter of the nut', millimetre, 3),
    'nut pitch diameter': result('D₂max', 'greatest pitch diameter of the nut', millimetre, 3),
    'strength ratio': result('J', 'bolt thread over female thread', one, 3),
    'engagement for the bolt': result('Q', 'engagement at which neither strips before the bolt breaks', millimetre, 2),
    'engagement needed': result('L', 'engagement at which the thread carries the breaking load', millimetre, 2),
  },
  range: 'Full threads only; nut dilation and thread bending are not counted. Metric 6g/6H, inch class 2A/2B limits.',
  source:
    'FED-STD-H28/2B; limits of ISO 965-1 and ASME B1.1 from memory. The short forms of NASA TM-106943 give 7 to 17 % more and are not used.',
  tables: ['values-thread-strip', 'thread-tolerances', 'female-threads'],
  cautions: ['aluminium-thread', 'book-torque'],
  example: {
    given: { thread: 'M6', into: 'aluminium', engagement: '9 mm' },
    gives: { 'female shear area': '12.191 mm²', 'strip load': '13 166 N' },
  },
  work: (given) => {
    const thread = readThread(given.words('thread'));
    if (thread === undefined) {
      given.doubt('calculation-value-wrong', '“' + given.words('thread') + '” names no thread known here');
      return {};
    }
    const limits = shearLimits(thread);
    const female = femaleShear(thread, limits);
    const male = boltShear(thread, limits);
    const areas = {
      'female shear area': female,
      'bolt shear area': male,
      'bolt major diameter': limits.boltMajor,
      'bolt pitch diameter': limits.boltPitch,
      'nut minor diameter': limits.nutMinor,
      'nut pitch diameter': limits.nutPitch,
    };
    const tensile = published('female-threads', given.words('into'), 'tensile', megapascal);
    if (tensile !== undefined) given.use('R_m', 'tensile strength of the female thread', tensile);
    const strength = given.maybe('tensile', megapascal) ?? (tensile === undefined ? undefined : tensile.quantity / 1e6);
    if (strength === undefined) return areas;
    const share =
      given.maybe('shear share', one) ?? cellNumber('female-threads', given.words('into'), 'shear share') ?? 0.6;
    const perMillimetre = female * strength * share;
    const engagement = given.maybe('engagement', millimetre);
    const breaking = given.maybe('breaking load', newton);
    const bolt = given.maybe('bolt tensile', megapascal);
    const ratio = bolt === undefined ? undefined : (male * bolt) / (female * strength);
    return {
      ...areas,
      'strength ratio': ratio,
      'engagement for the bolt':
        ratio === undefined ? undefined : Math.max(1, ratio) * ((2 * stressArea(thread)) / male),
      'strip load': engagement === undefined ? undefined : engagement * perMillimetre,
      'engagement needed': breaking === undefined ? undefined : breaking / perMillimetre,
    };
  },
});
