// A reading against standard and limit, with the instrument's uncertainty between them.
import type { Written, WrittenRange } from '../quantity/quantity.ts';
import type { Instrument, Limit, Setting, Value } from '../records/model.ts';
import type { Verdict } from './book.ts';
import { expandedUncertainty } from './uncertainty.ts';

/** What a reading is judged by: the maker's limit entry, or the range (or value) of a setting. */
export interface Measure {
  readonly standard?: WrittenRange;
  readonly limit?: WrittenRange;
}

/** A setting's range is both its standard and its limit; a setting with a value alone has only a standard. */
export function measureOf(limit: Limit | undefined, setting: Setting | undefined): Measure | undefined {
  if (limit !== undefined) return limit;
  if (setting?.range !== undefined) return { standard: setting.range, limit: setting.range };
  if (setting === undefined || setting.value.kind !== 'read') return undefined;
  const { quantity, unit, decimals, text } = setting.value.written;
  return { standard: { low: quantity, high: quantity, unit, decimals, text } };
}

/** How far inside a range a value lies, SI: negative when outside; endless when the range does not bound it. */
function roomInside(value: number, range: WrittenRange): number {
  const below = range.high === undefined ? Number.POSITIVE_INFINITY : range.high - value;
  const above = range.low === undefined ? Number.POSITIVE_INFINITY : value - range.low;
  return Math.min(below, above);
}

/** Rounding of the two readings' units must not decide: 1 part in 10⁹ of the value. */
function hair(value: number): number {
  return Math.abs(value) * 1e-9 + 1e-15;
}

function sameDimension(written: Written, range: WrittenRange | undefined): boolean {
  return range === undefined || range.unit.dimension === written.unit.dimension;
}

/**
 * The verdict. At the limit the guard band of ISO 14253-1 is kept on both sides: a part is called good only when the
 * limit lies outside the reading's uncertainty, and past the limit only then too; between them it is too close to call.
 * The standard is not guarded: both sides of it are usable, so nothing is decided there. No verdict on words, blanks, and
 * what is far better than new.
 */
export function verdictOf(
  value: Value | undefined,
  measure: Measure | undefined,
  instrument: Instrument | undefined,
): Verdict | undefined {
  if (value?.kind !== 'read') return undefined;
  const reading = value.written;
  const { standard, limit } = measure ?? {};
  if (!sameDimension(reading, standard) || !sameDimension(reading, limit)) return 'no limit known';
  const inStandard = standard !== undefined && roomInside(reading.quantity, standard) >= -hair(reading.quantity);
  if (limit === undefined) return inStandard ? 'within standard' : 'no limit known';
  const room = roomInside(reading.quantity, limit);
  const guard = expandedUncertainty(reading, instrument);
  if (limit === standard) return settingVerdict(room, guard, reading.quantity);
  if (standard !== undefined && betterBy(reading.quantity, standard, limit) > 2 * guard) return undefined;
  if (room < -guard - hair(reading.quantity)) return 'past the limit';
  if (room < guard - hair(reading.quantity)) return 'too close to call with this instrument';
  return inStandard ? 'within standard' : 'worn, usable';
}

/**
 * How far a value lies beyond the standard on the side away from the limit, SI: a worn part cannot be better than new, so
 * such a reading gets no verdict but a query. Negative when it is not beyond.
 */
export function betterBy(value: number, standard: WrittenRange, limit: WrittenRange): number {
  const upwards = limit.high !== undefined && limit.low === undefined;
  const downwards = limit.low !== undefined && limit.high === undefined;
  if (upwards && standard.low !== undefined) return standard.low - value;
  if (downwards && standard.high !== undefined) return value - standard.high;
  return Number.NEGATIVE_INFINITY;
}

/** A setting is set to its mark, not worn towards it: inside its range is inside, outside by more than the uncertainty is out. */
function settingVerdict(room: number, guard: number, value: number): Verdict {
  if (room >= -hair(value)) return 'within standard';
  return room < -guard ? 'past the limit' : 'too close to call with this instrument';
}
