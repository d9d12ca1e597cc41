// How far a reading may be off: the instrument's accuracy and what its last digit can show.
import type { Written } from '../quantity/quantity.ts';
import type { Instrument } from '../records/model.ts';

/** A written size in SI, whatever its sign. */
function size(written: Written): number {
  return Math.abs(written.quantity);
}

const tenths = [1, 0.1, 0.01, 0.001, 0.0001, 0.00001];

/** The smallest step the reading can show, SI: the instrument's resolution, else the last decimal that was written. */
function step(reading: Written, instrument: Instrument | undefined): number {
  const resolution = instrument?.resolution;
  if (resolution !== undefined && resolution.unit.dimension === reading.unit.dimension) return size(resolution);
  return (tenths[reading.decimals] ?? 10 ** -reading.decimals) * reading.unit.factor;
}

/** Largest permitted error of the instrument at this reading, SI. */
function accuracy(reading: Written, instrument: Instrument | undefined): number {
  if (instrument?.accuracy === undefined) return 0;
  const { absolute, share } = instrument.accuracy;
  const fixed = absolute?.unit.dimension === reading.unit.dimension ? size(absolute) : 0;
  return Math.max(fixed, (share ?? 0) * Math.abs(reading.quantity));
}

/**
 * Expanded uncertainty of a reading as a half width in SI, k = 2. Accuracy ±a and half a step are each taken as evenly spread (a/√3) and
 * added in squares, after JCGM 100:2008, 4.3.7. Counts are exact. Without an instrument only the written decimals speak.
 * @example accuracy 0.01 mm, steps of 0.05 mm: 2 · √((0.01² + 0.025²) / 3) = 0.031 mm
 */
export function expandedUncertainty(reading: Written, instrument: Instrument | undefined): number {
  if (reading.unit.dimension === 'count' || reading.unit.inverse === true) return 0;
  const a = accuracy(reading, instrument);
  const half = step(reading, instrument) / 2;
  return 2 * Math.sqrt((a * a + half * half) / 3);
}
