// What may be said of the odometer, in the three words of an odometer statement (49 CFR 580), with the reason in a sentence.
import { formatDecimal } from '../quantity/decimal.ts';
import { inUnit } from '../quantity/quantity.ts';
import { printQuantity } from '../figure/print.ts';
import type { InstrumentPeriod, Machine } from '../records/model.ts';
import type { Odometer } from './book.ts';

type Statement = Odometer['statement'];

function shown(period: InstrumentPeriod, end: 'from' | 'to'): string {
  const reads = period[end]?.reads;
  return reads === undefined ? 'an unknown reading' : printQuantity(reads.quantity, reads.unit, reads.decimals);
}

/** Why the distance before the first clock is not known; undefined when that clock began with the machine. */
function unknownStart(machine: Machine, first: InstrumentPeriod): string | undefined {
  const reads = first.from.reads;
  const fromNew = reads !== undefined && inUnit(reads.quantity, first.unit) === 0;
  const firstUse = machine.firstUse ?? machine.year;
  const later = firstUse !== undefined && first.from.day.slice(0, firstUse.length) > firstUse;
  if (fromNew && !later) return undefined;
  return `distance not known before ${first.from.day}, when the clock read ${shown(first, 'from')}`;
}

function troubleOf(period: InstrumentPeriod): string | undefined {
  const until = period.to === undefined ? 'now' : period.to.day;
  if (period.state === 'dead') return `clock “${period.id}” died at ${shown(period, 'to')} (until ${until})`;
  if (period.state === 'wrong drive') return `clock “${period.id}” counted wrongly, by a wrong drive (until ${until})`;
  if (period.state === 'reset') return `clock “${period.id}” was set back at ${shown(period, 'to')} (${until})`;
  return undefined;
}

function changeBetween(before: InstrumentPeriod, after: InstrumentPeriod): string | undefined {
  if (before.to?.reads === undefined || after.from.reads === undefined) {
    return `a reading at the change of clocks on ${after.from.day} is not known`;
  }
  if (before.to.day < after.from.day) return `no clock from ${before.to.day} to ${after.from.day}`;
  if (before.to.reads.quantity === after.from.reads.quantity) return undefined;
  return `clock changed on ${after.from.day}: ${shown(before, 'to')} out, ${shown(after, 'from')} in`;
}

/** Everything that speaks against `actual`, oldest first. */
function against(machine: Machine): readonly string[] {
  const [first, ...later] = machine.clock;
  if (first === undefined) return ['no clock is described in machine.yaml'];
  const changes = later.map((period, index) => changeBetween(machine.clock[index] ?? first, period));
  return [unknownStart(machine, first), ...machine.clock.map(troubleOf), ...changes].filter((why) => why !== undefined);
}

/** The statement for a handover, and for every page that prints a distance. */
export function odometerStatement(machine: Machine): Statement {
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
  return {
    word: 'actual',
    why: 'One unbroken record of one clock from new; nothing in the records speaks against it.',
  };
}
