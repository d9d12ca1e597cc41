// Every calculation, in the order of the workshop: one explicit line each.
import { humidAir, saturationPressure, standardAtmosphere } from './atmosphere.ts';
import { batteryGravity, batteryVolts, chargeTime, restedVolts } from './battery.ts';
import { boltStrength } from './bolt-strength.ts';
import { assemblyPreload, boltTorque, nutFactorTorque } from './bolt-torque.ts';
import { boreWear, nextOversize, pistonClearance } from './bore-wear.ts';
import type { Calculation } from './calculation.ts';
import { chainAdjustment, chainCentreDistance, chainLength, sprocketDiameter } from './chain-length.ts';
import { chainWear, wornLength } from './chain-wear.ts';
import { clearanceVolume, compressionRatio, ratioFromPressures } from './compression-ratio.ts';
import { coverTorqueBand } from './cover-torque.ts';
import { compressionToLimit } from './compression-to-limit.ts';
import { compressionSpread, compressionState, crankingPressure } from './cranking-pressure.ts';
import { limitVerdict, repeatReadings, wearToLimit } from './deciding.ts';
import { displacement } from './displacement.ts';
import { forkOil } from './fork-oil.ts';
import { clockFactor, overallRatio, roadSpeed, rollingCircumference } from './gearing.ts';
import { dwell, gapChange, topFromStops } from './ignition.ts';
import { lampLoad, lampResistance } from './lamp-load.ts';
import { jetChange, jetFlow, mixtureShift } from './mixture.ts';
import { monthsFrom } from './months.ts';
import { oilInFuel, pumpUse, tankTopUp } from './oil-in-fuel.ts';
import { crankAngle, pistonPosition, rimArc } from './piston-position.ts';
import { pistonSpeed } from './piston-speed.ts';
import { hotResistance, wireGauge } from './resistance.ts';
import { ringGap } from './ring-gap.ts';
import { preloadBand, screwTorque, turnAngle } from './screw-torque.ts';
import { endFloat, shimChoice } from './shims.ts';
import { spokeLength } from './spoke-length.ts';
import { sag, springRate } from './springs.ts';
import { threadGeometry } from './thread-geometry.ts';
import { threadStrip } from './thread-strip.ts';
import { tighteningSequence } from './tightening-order.ts';
import { torqueStages } from './torque-stages.ts';
import { torqueSlip } from './torque-slip.ts';
import { treadDepth } from './tread-depth.ts';
import { tyreDate } from './tyre-date.ts';
import { tyrePressure } from './tyre-pressure.ts';
import { tyreMarking } from './tyre-size.ts';
import { voltDrop, wireSize } from './volt-drop.ts';
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
  torqueStages,
  wrenchSetting,
  wrenchTorque,
  wrenchRange,
  tighteningSequence,
  displacement,
  compressionRatio,
  clearanceVolume,
  ratioFromPressures,
  crankingPressure,
  compressionState,
  compressionSpread,
  pistonSpeed,
  pistonPosition,
  crankAngle,
  rimArc,
  topFromStops,
  dwell,
  gapChange,
  standardAtmosphere,
  humidAir,
  saturationPressure,
  mixtureShift,
  jetChange,
  jetFlow,
  oilInFuel,
  tankTopUp,
  pumpUse,
  overallRatio,
  rollingCircumference,
  roadSpeed,
  clockFactor,
  chainLength,
  chainCentreDistance,
  chainWear,
  wornLength,
  chainAdjustment,
  sprocketDiameter,
  tyreMarking,
  tyreDate,
  tyrePressure,
  treadDepth,
  batteryVolts,
  restedVolts,
  batteryGravity,
  chargeTime,
  voltDrop,
  wireSize,
  wireGauge,
  hotResistance,
  lampLoad,
  lampResistance,
  boreWear,
  pistonClearance,
  nextOversize,
  ringGap,
  shimChoice,
  endFloat,
  springRate,
  spokeLength,
  sag,
  forkOil,
  limitVerdict,
  repeatReadings,
  wearToLimit,
  compressionToLimit,
  monthsFrom,
];

const byId = new Map(calculations.map((calculation) => [calculation.id, calculation]));

/** A calculation by its id; undefined when there is none. */
export function calculationById(id: string): Calculation | undefined {
  return byId.get(id);
}
