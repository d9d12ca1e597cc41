// Units of mass, force, torque, stress, pressure, stiffness and density.
import { inchMetres, poundForceNewtons, poundMass, standardGravity, unit } from './unit-make.ts';
import type { Unit } from './quantity.ts';

export const kilogram = unit(
  'mass',
  'kg',
  1,
  'kgs',
  'kilo',
  'kilos',
  'kilogram',
  'kilograms',
  'kilogramme',
  'kilogrammes',
);
export const gram = unit('mass', 'g', 0.001, 'gr', 'grm', 'gram', 'grams', 'gramme', 'grammes', 'gm', 'gms');
export const pound = unit('mass', 'lb', poundMass, 'lbs', 'pound', 'pounds', 'lbm');
export const ounce = unit('mass', 'oz', poundMass / 16, 'ozs', 'ounce', 'ounces');
export const masses = [kilogram, gram, pound, ounce] as const;

export const newton = unit('force', 'N', 1, 'newton', 'newtons');
export const kilonewton = unit('force', 'kN', 1000, 'kilonewton', 'kilonewtons');
export const kilogramForce = unit('force', 'kgf', standardGravity, 'kg', 'kgs', 'kp', 'kilopond');
export const poundForce = unit('force', 'lbf', poundForceNewtons, 'lb', 'lbs', 'pound', 'pounds');
export const ounceForce = unit('force', 'ozf', poundForceNewtons / 16, 'oz');
export const forces = [newton, kilonewton, kilogramForce, poundForce, ounceForce] as const;

// Spellings are compared without spaces, points, hyphens and dots, so `ft-lb`, `ft lb` and `ft.lb` are one.
export const newtonMetre = unit(
  'torque',
  'N·m',
  1,
  'newtonmetre',
  'newtonmetres',
  'newtonmeter',
  'newtonmeters',
  'mN',
  'm·N',
);
export const newtonCentimetre = unit('torque', 'N·cm', 0.01, 'newtoncentimetre', 'newtoncentimetres', 'cmN');
export const newtonMillimetre = unit('torque', 'N·mm', 0.001, 'newtonmillimetre', 'newtonmillimetres');
export const kilogramForceMetre = unit(
  'torque',
  'kgf·m',
  standardGravity,
  'kgm',
  'mkg',
  'mkgf',
  'mkp',
  'kpm',
  'mkgs',
  'kgsm',
  'kilogrammetre',
  'kilogrammetres',
  'kilogrammeter',
  'kilogrammeters',
  'metrekilogram',
  'metrekilograms',
  'meterkilogram',
  'meterkilograms',
  'metrekilo',
  'metrekilos',
  'kilopondmetre',
  'kilogramforcemetre',
);
export const kilogramForceCentimetre = unit(
  'torque',
  'kgf·cm',
  standardGravity / 100,
  'kgcm',
  'cmkg',
  'cmkgf',
  'cmkp',
  'kpcm',
  'kgscm',
  'kilogramcentimetre',
  'kilogramcentimetres',
  'kilogramcentimeters',
  'centimetrekilogram',
  'centimetrekilograms',
);
export const poundForceFoot = unit(
  'torque',
  'lbf·ft',
  poundForceNewtons * 0.3048,
  'ftlb',
  'ftlbs',
  'lbft',
  'lbsft',
  'ftlbf',
  'lbfft',
  'ftpound',
  'ftpounds',
  'footpound',
  'footpounds',
  'footlb',
  'footlbs',
  'feetlbs',
  'poundfoot',
  'poundfeet',
  'poundsfeet',
  'poundsfoot',
  'lbfoot',
  'lbfeet',
  'lbsfoot',
  'lbsfeet',
  "ft'lb",
  "ft'lbs",
  "lb'ft",
);
export const poundForceInch = unit(
  'torque',
  'lbf·in',
  poundForceNewtons * inchMetres,
  'inlb',
  'inlbs',
  'lbin',
  'lbsin',
  'inlbf',
  'inchpound',
  'inchpounds',
  'inchlb',
  'inchlbs',
  'poundinch',
  'poundinches',
  'poundsinch',
  'poundsinches',
  'lbinch',
  'lbsinch',
);
export const ounceForceInch = unit('torque', 'ozf·in', (poundForceNewtons / 16) * inchMetres, 'ozin', 'inoz');
export const torques = [
  newtonMetre,
  kilogramForceMetre,
  kilogramForceCentimetre,
  poundForceFoot,
  poundForceInch,
  newtonCentimetre,
  newtonMillimetre,
  ounceForceInch,
] as const;

const psiPascals = poundForceNewtons / inchMetres ** 2;
export const megapascal = unit('stress', 'MPa', 1e6, 'N/mm²', 'N/sqmm', 'megapascal', 'megapascals');
export const gigapascal = unit('stress', 'GPa', 1e9, 'kN/mm²');
export const kilogramForcePerSquareMillimetre = unit(
  'stress',
  'kgf/mm²',
  standardGravity * 1e6,
  'kg/mm²',
  'kgf/sqmm',
  'kg/sqmm',
  'kp/mm²',
);
export const poundPerSquareInchStress = unit('stress', 'psi', psiPascals, 'lbf/in²', 'lb/in²', 'lbf/sqin', 'lb/sqin');
export const ksi = unit('stress', 'ksi', psiPascals * 1000, 'kpsi', 'kip/in²');
export const tonPerSquareInch = unit(
  'stress',
  'tonf/in²',
  psiPascals * 2240,
  'ton/in²',
  'tons/in²',
  'ton/sqin',
  'tons/sqin',
  'tsi',
);
export const pascalStress = unit('stress', 'Pa', 1);
export const stresses = [
  megapascal,
  gigapascal,
  kilogramForcePerSquareMillimetre,
  poundPerSquareInchStress,
  ksi,
  tonPerSquareInch,
  pascalStress,
] as const;

type Pressure = 'gauge pressure' | 'absolute pressure';
/** inHg and mmHg are the conventional ones (0 °C mercury, standard gravity). */
function pressureUnits<D extends Pressure>(
  dimension: D,
  mark: string,
): Readonly<
  Record<
    | 'bar'
    | 'kilopascal'
    | 'psi'
    | 'kilogramForcePerSquareCentimetre'
    | 'hectopascal'
    | 'millibar'
    | 'inchOfMercury'
    | 'millimetreOfMercury'
    | 'atmosphere'
    | 'megapascal'
    | 'pascal',
    Unit<D>
  >
> {
  const marked = (...spellings: string[]) => [...spellings, ...spellings.map((spelling) => spelling + mark)];
  return {
    bar: unit(dimension, 'bar', 1e5, ...marked('bars'), `bar${mark}`),
    kilopascal: unit(dimension, 'kPa', 1000, ...marked('kilopascal', 'kilopascals'), `kPa${mark}`),
    psi: unit(
      dimension,
      'psi',
      psiPascals,
      ...marked(
        'lbf/in²',
        'lb/in²',
        'lbs/in²',
        'lbf/sqin',
        'lb/sqin',
        'lbs/sqin',
        'lb/sqinch',
        'lbs/sqinch',
        'lb/squareinch',
        'p.s.i',
        'pounds/squareinch',
      ),
      `psi${mark}`,
    ),
    kilogramForcePerSquareCentimetre: unit(
      dimension,
      'kgf/cm²',
      98066.5,
      'kg/cm²',
      'kgf/sqcm',
      'kg/sqcm',
      'kp/cm²',
      'at',
      'kgs/cm²',
    ),
    hectopascal: unit(dimension, 'hPa', 100, 'hectopascal', 'hectopascals'),
    millibar: unit(dimension, 'mbar', 100, 'mb', 'millibar', 'millibars'),
    inchOfMercury: unit(dimension, 'inHg', 3386.38864034, '"Hg', '″Hg', 'inchHg', 'inchesHg', 'inchesofmercury'),
    millimetreOfMercury: unit(dimension, 'mmHg', 133.322387415, 'torr', 'mmofmercury'),
    atmosphere: unit(dimension, 'atm', 101325, 'atmosphere', 'atmospheres'),
    megapascal: unit(dimension, 'MPa', 1e6, 'N/mm²'),
    pascal: unit(dimension, 'Pa', 1, 'pascal', 'pascals', 'N/m²'),
  };
}
const gauge = pressureUnits('gauge pressure', 'g');
const absolute = pressureUnits('absolute pressure', 'a');
export const {
  bar,
  kilopascal,
  psi,
  kilogramForcePerSquareCentimetre,
  hectopascal,
  millibar,
  inchOfMercury,
  millimetreOfMercury,
} = gauge;
export const {
  bar: barAbsolute,
  kilopascal: kilopascalAbsolute,
  hectopascal: hectopascalAbsolute,
  pascal: pascalAbsolute,
  psi: psiAbsolute,
  inchOfMercury: inchOfMercuryAbsolute,
  millimetreOfMercury: millimetreOfMercuryAbsolute,
} = absolute;
export const gaugePressures = Object.values(gauge);
export const absolutePressures = Object.values(absolute);

export const newtonPerMillimetre = unit('stiffness', 'N/mm', 1000);
export const newtonPerMetre = unit('stiffness', 'N/m', 1);
export const kilogramForcePerMillimetre = unit('stiffness', 'kgf/mm', standardGravity * 1000, 'kg/mm', 'kp/mm');
export const poundForcePerInch = unit(
  'stiffness',
  'lbf/in',
  poundForceNewtons / inchMetres,
  'lb/in',
  'lbs/in',
  'lb/inch',
  'lbs/inch',
  'lbf/inch',
);
export const stiffnesses = [
  newtonPerMillimetre,
  newtonPerMetre,
  kilogramForcePerMillimetre,
  poundForcePerInch,
] as const;

export const kilogramPerCubicMetre = unit('density', 'kg/m³', 1);
export const gramPerCubicCentimetre = unit('density', 'g/cm³', 1000, 'g/cc', 'g/ml', 'kg/l', 'gm/cc');
export const densities = [kilogramPerCubicMetre, gramPerCubicCentimetre] as const;
