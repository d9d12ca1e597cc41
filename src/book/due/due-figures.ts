// The figures of a due line: at which distance, how that shows on the clock, how much is left.
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import { of } from '../../quantity/quantity.ts';
import { metreRidden } from '../../quantity/units.ts';
import type { ServiceLine } from '../../records/model.ts';
import type { DueLine } from '../book.ts';
import type { OdometerWork } from '../odometer.ts';
import { sourceLine } from '../torque.ts';
import type { Bound } from './bounds.ts';
import type { Step } from './steps.ts';

function dueAt(step: Step, line: ServiceLine, odometer: OdometerWork): Figure<'distance ridden'> | undefined {
  if (step.dueMetres === undefined) return undefined;
  const { unit } = odometer;
  const interval = step.interval.distance;
  const place = { ...line.at, path: [...line.at.path, 'every'] };
  const inputs =
    interval === undefined
      ? []
      : [{ symbol: 'interval', name: 'interval of the schedule', figure: written(interval, place) }];
  const working = {
    calculation: 'service-due',
    formula: `due = distance at start (${step.from.words}) + interval`,
    inputs,
    source: sourceLine(line.source),
  };
  return { quantity: of(step.dueMetres, metreRidden), unit, decimals: 0, origin: { kind: 'worked out', working } };
}

function leftFigure(
  bound: Bound | undefined,
  due: Figure<'distance ridden'> | undefined,
  odometer: OdometerWork,
): Figure<'distance ridden'> | undefined {
  if (bound === undefined || due === undefined) return undefined;
  const working = {
    calculation: 'service-left',
    formula: 'left = due − distance now',
    inputs: [{ symbol: 'due', name: 'due at', figure: due }],
    source: 'odometer of the machine',
  };
  return {
    quantity: of(bound.left, metreRidden),
    unit: odometer.unit,
    decimals: 0,
    origin: { kind: 'worked out', working },
  };
}

type DueFigures = Pick<DueLine, 'dueDay' | 'dueAt' | 'dueOnClock' | 'left'>;

/** All printed figures of a step; what cannot be known is left out. */
export function dueFigures(
  step: Step,
  bounds: readonly Bound[],
  line: ServiceLine,
  odometer: OdometerWork,
): DueFigures {
  const at = dueAt(step, line, odometer);
  const onClock = at === undefined ? undefined : odometer.odometer.onClock(at);
  const distance = leftFigure(
    bounds.find((one) => one.kind === 'distance'),
    at,
    odometer,
  );
  const days = bounds.find((one) => one.kind === 'date')?.left;
  const left = { ...(days === undefined ? {} : { days }), ...(distance === undefined ? {} : { distance }) };
  return {
    ...(step.dueDay === undefined ? {} : { dueDay: step.dueDay }),
    ...(at === undefined ? {} : { dueAt: at }),
    ...(onClock === undefined ? {} : { dueOnClock: onClock }),
    ...(days === undefined && distance === undefined ? {} : { left }),
  };
}

/** The distance of the machine at which it is due, in the unit of the schedule, where the clock counts in another. */
export function dueInBooksUnit(
  line: ServiceLine,
  dueAt: Figure<'distance ridden'> | undefined,
): Figure<'distance ridden'> | undefined {
  const { unit } = (line.every ?? line.first?.at ?? line.second)?.distance ?? {};
  return unit === undefined || dueAt === undefined || unit === dueAt.unit ? undefined : { ...dueAt, unit };
}
