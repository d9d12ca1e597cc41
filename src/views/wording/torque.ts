// A torque in the three units of the trade: the manual's own first and as the manual writes it, then the other two.
import { printFigure, printIn } from '../../figure/print.ts';
import type { Figure } from '../../figure/figure.ts';
import type { TorqueRow } from '../../book/book.ts';
import type { Machine } from '../../records/model.ts';
import { formatDecimal } from '../../quantity/decimal.ts';
import { inUnit } from '../../quantity/quantity.ts';
import type { Unit } from '../../quantity/quantity.ts';
import { kilogramForceMetre, newtonMetre, poundForceFoot } from '../../quantity/units.ts';

type Value = NonNullable<TorqueRow['value']>;

const three: readonly Unit<'torque'>[] = [newtonMetre, kilogramForceMetre, poundForceFoot];

/** Converted figures carry what a wrench can show, no more: 21.6 N·m, 2.20 kgf·m, 15.9 lbf·ft; none from 100 up. */
function converted(figure: Figure<'torque'>, unit: Unit<'torque'>): number {
  if (unit.symbol === kilogramForceMetre.symbol) return 2;
  return inUnit<'torque'>(figure.quantity, unit) < 100 ? 1 : 0;
}

/** A figure or a span in one unit: `19.6 to 24.5 N·m`. */
function inOne(low: Figure<'torque'>, high: Figure<'torque'> | undefined, unit: Unit<'torque'>): string {
  const decimals = converted(low, unit);
  const last = printIn(high ?? low, unit, decimals);
  if (high === undefined || high.quantity === low.quantity) return last;
  return `${formatDecimal(inUnit<'torque'>(low.quantity, unit), decimals)} to ${last}`;
}

/** The unit that stands first: the writer's own; for a band that was worked out, the unit of the machine. */
export function firstUnit(value: Value, units: Machine['units']): Unit<'torque'> {
  if (value.low.origin.kind !== 'worked out') return value.low.unit;
  return units === 'imperial' ? poundForceFoot : newtonMetre;
}

/** The value as its writer gave it: `2.2 kgf·m`, `9 to 11 lbf·ft`; a band in the unit of the machine. */
export function torqueAsWritten(value: Value, units: Machine['units']): string {
  const { low, high } = value;
  const unit = firstUnit(value, units);
  if (unit.symbol !== low.unit.symbol) return inOne(low, high, unit);
  if (high === undefined || high.quantity === low.quantity) return printFigure(low);
  return `${formatDecimal(inUnit<'torque'>(low.quantity, low.unit), low.decimals)} to ${printFigure(high)}`;
}

/** The same value in the units that do not stand first, in the order N·m, kgf·m, lbf·ft. */
export function torqueInOtherUnits(value: Value, units: Machine['units']): readonly string[] {
  const first = firstUnit(value, units);
  const others = three.filter((unit) => unit.symbol !== first.symbol);
  return others.map((unit) => inOne(value.low, value.high, unit));
}

/** Stages in their order, as written: `1.1, then 2.2 kgf·m`; each with its unit where they differ. */
export function stagesText(stages: readonly Figure<'torque'>[]): string {
  const last = stages.at(-1);
  if (last === undefined) return '';
  const alike = stages.every((stage) => stage.unit === last.unit);
  const texts = stages.map((stage) =>
    alike && stage !== last
      ? formatDecimal(inUnit<'torque'>(stage.quantity, stage.unit), stage.decimals)
      : printFigure(stage),
  );
  return texts.join(', then ');
}
