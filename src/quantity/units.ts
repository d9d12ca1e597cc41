// Every unit, by dimension, and by name. The first unit of a dimension is the one we print when nobody chose another.
import type { Dimension, Unit } from './quantity.ts';
import * as electric from './units-electric.ts';
import * as force from './units-force.ts';
import * as motion from './units-motion.ts';
import * as space from './units-space.ts';

export * from './units-electric.ts';
export * from './units-force.ts';
export * from './units-motion.ts';
export * from './units-space.ts';

/** All units of each dimension; symbols are unique within a dimension. Order of dimensions: the likelier meaning first. */
export const units: { readonly [D in Dimension]: readonly Unit<D>[] } = {
  length: space.lengths,
  area: space.areas,
  volume: space.volumes,
  torque: force.torques,
  mass: force.masses,
  force: force.forces,
  'gauge pressure': force.gaugePressures,
  'absolute pressure': force.absolutePressures,
  stress: force.stresses,
  stiffness: force.stiffnesses,
  density: force.densities,
  angle: space.angles,
  'crank angle': space.crankAngles,
  turns: space.turnsUnits,
  'distance ridden': motion.distances,
  duration: motion.durations,
  'running time': motion.runningTimes,
  'calendar time': motion.calendarTimes,
  speed: motion.speeds,
  'rotation speed': motion.rotationSpeeds,
  flow: motion.flows,
  'fuel use': motion.fuelUses,
  temperature: motion.temperatures,
  'temperature difference': motion.temperatureDifferences,
  voltage: electric.voltages,
  current: electric.currents,
  resistance: electric.resistances,
  capacitance: electric.capacitances,
  power: electric.powers,
  charge: electric.charges,
  ratio: electric.ratios,
  share: electric.shares,
  'relative humidity': electric.relativeHumidities,
  count: electric.counts,
  'specific gravity': electric.specificGravities,
};

/** Dimensions in the order in which a quantity of unknown kind is tried. */
export const dimensions = Object.keys(units) as readonly Dimension[];
