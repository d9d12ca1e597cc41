// Every calculation, in the order of the workshop: one explicit line each.
import { boltStrength } from './bolt-strength.ts';
import { assemblyPreload, boltTorque, nutFactorTorque } from './bolt-torque.ts';
import type { Calculation } from './calculation.ts';
import { clearanceVolume, compressionRatio, ratioFromPressures } from './compression-ratio.ts';
import { coverTorqueBand } from './cover-torque.ts';
import { limitVerdict, repeatReadings, wearToLimit } from './deciding.ts';
import { displacement } from './displacement.ts';
import { clockFactor, overallRatio, roadSpeed, rollingCircumference } from './gearing.ts';
import { oilInFuel, pumpUse, tankTopUp } from './oil-in-fuel.ts';
import { crankAngle, pistonPosition, rimArc } from './piston-position.ts';
import { preloadBand, screwTorque, turnAngle } from './screw-torque.ts';
import { threadGeometry } from './thread-geometry.ts';
import { threadStrip } from './thread-strip.ts';
import { torqueSlip } from './torque-slip.ts';
import { tyreDate } from './tyre-date.ts';
import { tyreMarking } from './tyre-size.ts';
import { wrenchRange, wrenchSetting, wrenchTorque } from './wrench-setting.ts';

/** The shelf. A new calculation is one file and one line here; its page and its place on the command line follow. */
export const calculations: readonly Calculation[] = [
  threadGeometry,
  boltStrength,
  threadStrip,
  boltTorque,
  nutFactorTorque,
  screwTorque,
  assemblyPreload,
  preloadBand,
  turnAngle,
  coverTorqueBand,
  torqueSlip,
  wrenchSetting,
  wrenchTorque,
  wrenchRange,
  displacement,
  compressionRatio,
  clearanceVolume,
  ratioFromPressures,
  pistonPosition,
  crankAngle,
  rimArc,
  oilInFuel,
  tankTopUp,
  pumpUse,
  overallRatio,
  rollingCircumference,
  roadSpeed,
  clockFactor,
  tyreMarking,
  tyreDate,
  limitVerdict,
  repeatReadings,
  wearToLimit,
];

/** A calculation by its id; undefined when there is none. */
export function calculationById(id: string): Calculation | undefined {
  return calculations.find((calculation) => calculation.id === id);
}
