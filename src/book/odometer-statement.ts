// What may be said of the odometer, in the three words of an odometer statement (49 CFR 580), with the reason in a sentence.
import { formatDecimal } from '../quantity/decimal.ts';
import { daysBetween } from '../quantity/day-arithmetic.ts';
import { inUnit } from '../quantity/quantity.ts';
import { printQuantity } from '../figure/print.ts';
import type { ClockEnd, InstrumentPeriod, Machine } from '../records/model.ts';
import type { Odometer } from './book.ts';
import type { Travelled } from './distance-travelled.ts';

type Statement = Odometer['statement'];

function shown(period: InstrumentPeriod, end: 'from' | 'to'): string {
  const reads = period[end]?.reads;
  return reads === undefined ? 'an unknown reading' : printQuantity(reads.quantity, reads.unit, reads.decimals);
}

/** As much of the date as was written: never a day made of a month. */
function dated({ day, whole }: ClockEnd): string {
  return day.slice(0, whole === 'year' ? 4 : whole === 'month' ? 7 : 10);
}

/** Why the distance before the first clock is not known; undefined when that clock began with the machine. */
function unknownStart(machine: Machine, first: InstrumentPeriod): string | undefined {
  const { from } = first;
  if (from.reads === undefined) {
    return `distance not known before the first reading in the records: what the clock read on or before ${dated(from)} is not written down`;
  }
  const fromNew = inUnit(from.reads.quantity, first.unit) === 0;
  const firstUse = machine.firstUse ?? machine.year;
  const later = firstUse !== undefined && from.day.slice(0, firstUse.length) > firstUse;
  if (fromNew && !later) return undefined;
  return `distance not known before ${dated(from)}, when the clock read ${shown(first, 'from')}`;
}

function troubleOf(period: InstrumentPeriod): string | undefined {
  const until = period.to === undefined ? 'now' : dated(period.to);
  const known = period.to?.reads !== undefined;
  if (period.state === 'dead') {
    const at = known ? `died at ${shown(period, 'to')}` : 'died, and nobody wrote down at what';
    return `clock “${period.id}” ${at} (until ${until})`;
  }
  if (period.state === 'wrong drive') return `clock “${period.id}” counted wrongly, by a wrong drive (until ${until})`;
  if (period.state !== 'reset') return undefined;
  return `clock “${period.id}” was set back${known ? ` at ${shown(period, 'to')}` : ''} (${until})`;
}

function changeBetween(before: InstrumentPeriod, after: InstrumentPeriod): string | undefined {
  if (before.to?.reads === undefined || after.from.reads === undefined) {
    return `a reading at the change of clocks on ${dated(after.from)} is not known`;
  }
  if (before.to.day < after.from.day) return `no clock from ${dated(before.to)} to ${dated(after.from)}`;
  if (before.to.reads.quantity === after.from.reads.quantity) return undefined;
  return `clock changed on ${dated(after.from)}: ${shown(before, 'to')} out, ${shown(after, 'from')} in`;
}

/** Everything that speaks against `actual`, oldest first. */
function against(machine: Machine): readonly string[] {
  const [first, ...later] = machine.clock;
  if (first === undefined) return [];
  const changes = later.map((period, index) => changeBetween(machine.clock[index] ?? first, period));
  return [unknownStart(machine, first), ...machine.clock.map(troubleOf), ...changes].filter((why) => why !== undefined);
}

/** Days from the first use within which somebody must have read the clock, for the records to speak of the whole life. */
const fromTheBeginning = 366;

/** The statement for a handover, and for every page that prints a distance. `readings` are those of the records, oldest first. */
export function odometerStatement(machine: Machine, readings: readonly Travelled[]): Statement {
  // Of what nobody has described, neither the one nor the other can be said.
  if (machine.clock.length === 0)
    return { word: 'not known', why: 'No clock is described in machine.yaml, so nothing is said of the distance.' };
  const reasons = against(machine);
  if (reasons.length > 0)
    return { word: 'not actual', why: `The clock does not show the machine's distance: ${reasons.join('; ')}.` };
  const rolled = machine.clock.find((period) => period.state === 'rolled over');
  if (rolled !== undefined) {
    const most = formatDecimal(10 ** rolled.digits - 1, 0);
    return {
      word: 'exceeds mechanical limit',
      why: `The clock has passed ${most} ${rolled.unit.symbol} and begun again.`,
    };
  }
  return borneOut(machine, readings);
}

/** Nothing speaks against the clock: whether its whole life was read, or is only stated in machine.yaml. */
function borneOut(machine: Machine, readings: readonly Travelled[]): Statement {
  const [start] = machine.clock;
  const ofRecords = readings.filter((one) => one.job !== undefined);
  const [first] = ofRecords;
  const stated =
    start === undefined ? '' : `The clock is stated to have counted the whole distance since ${dated(start.from)}`;
  if (start === undefined || first === undefined) {
    return { word: 'as stated by the owner', why: `${stated}; the records hold no reading of it.` };
  }
  if (daysBetween(start.from.day, first.day) > fromTheBeginning) {
    const reads = printQuantity(first.reading.reads.quantity, first.reading.reads.unit, first.reading.reads.decimals);
    const why = `${stated}; the first reading in the records is ${reads} on ${first.day}, and nothing in them bears out what went before.`;
    return { word: 'as stated by the owner', why };
  }
  if (ofRecords.some((one) => one.metres === undefined)) {
    return {
      word: 'as stated by the owner',
      why: `${stated}; a reading in the records goes back, and nothing says why.`,
    };
  }
  return {
    word: 'actual',
    why: 'One unbroken record of one clock from new; nothing in the records speaks against it.',
  };
}
