// Why a line of the due list stands where it stands, in one sentence for the sheet.
import { printFigure, printQuantity } from '../../figure/print.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import type { Unit } from '../../quantity/quantity.ts';
import { of } from '../../quantity/quantity.ts';
import { metreRidden } from '../../quantity/units.ts';
import type { DueLine } from '../book.ts';
import type { Bound } from './bounds.ts';
import type { Step } from './steps.ts';

type Printed = Pick<DueLine, 'dueDay' | 'dueAt' | 'dueOnClock'>;

function count(number: number, word: string): string {
  return `${formatDecimal(number, 0)} ${number === 1 ? word : `${word}s`}`;
}

function atDistance(printed: Printed): string {
  if (printed.dueOnClock !== undefined) return `at ${printFigure(printed.dueOnClock)} on the clock`;
  return printed.dueAt === undefined ? '' : `at ${printFigure(printed.dueAt)}`;
}

/** `by distance at 24 418 mi on the clock, 140 mi left`. */
function boundWords(bound: Bound, printed: Printed, unit: Unit<'distance ridden'>): string {
  const over = bound.left < 0 ? 'over' : 'left';
  const size = Math.abs(bound.left);
  if (bound.kind === 'hours') return `by running hours, ${formatDecimal(size / 3600, 1)} h ${over}`;
  if (bound.kind === 'date') return `by date on ${printed.dueDay ?? ''}, ${count(size, 'day')} ${over}`;
  return `by distance ${atDistance(printed)}, ${printQuantity(of(size, metreRidden), unit, 0)} ${over}`;
}

/** Bounds that the interval has but that cannot be judged. */
function unjudged(step: Step, bounds: readonly Bound[]): string | undefined {
  const has = (kind: Bound['kind']): boolean => bounds.some((bound) => bound.kind === kind);
  const missing = [
    step.interval.distance !== undefined && !has('distance')
      ? 'no reading of the clock to count the distance from'
      : undefined,
    step.interval.running !== undefined && !has('hours') ? 'no hour meter reading to count from' : undefined,
  ].filter((one) => one !== undefined);
  return missing.length === 0 ? undefined : missing.join('; ');
}

/** The bound that comes first, the others after it, and from where they are counted. */
export function stepSentence(
  step: Step,
  bounds: readonly Bound[],
  printed: Printed,
  unit: Unit<'distance ridden'>,
): string {
  const [first, ...others] = bounds.map((bound) => boundWords(bound, printed, unit));
  const lead = first === undefined ? undefined : `${bounds.length > 1 ? 'first ' : ''}${first}`;
  const then = others.length === 0 ? undefined : `then ${others.join(', then ')}`;
  const from = `${step.interval.text}, counted from: ${step.from.words}`;
  return [lead, then, from, unjudged(step, bounds)].filter((part) => part !== undefined).join('; ');
}

/** What of the sentence no figure of the line says: running hours, another beginning than the last time, what cannot be judged. */
export function stepBesides(
  step: Step,
  bounds: readonly Bound[],
  printed: Printed,
  unit: Unit<'distance ridden'>,
): readonly string[] {
  const hours = bounds.filter(({ kind }) => kind === 'hours').map((bound) => boundWords(bound, printed, unit));
  const from = step.from.words.startsWith('last done') ? undefined : `counted from: ${step.from.words}`;
  return [...hours, from, unjudged(step, bounds)].filter((part) => part !== undefined);
}

/** `at your pace about 2027-05-03, between 2027-04-01 and 2027-09-10`. */
export function paceWords(projected: DueLine['projected']): string | undefined {
  if (projected === undefined) return undefined;
  const { early, likely, late } = projected;
  return `at your pace about ${likely}, ${late === undefined ? `not before ${early}` : `between ${early} and ${late}`}`;
}

export const unknownHistory = {
  'due now': 'no record of it: an unknown history counts as due now',
  inspect: 'no record of it: inspect, then decide',
} as const;
