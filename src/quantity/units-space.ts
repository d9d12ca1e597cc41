// Units of length, area, volume, angle and turns.
import { imperialGallon, inchMetres, unit, usGallon } from './unit-make.ts';

export const millimetre = unit('length', 'mm', 0.001, 'millimetre', 'millimetres', 'millimeter', 'millimeters');
export const centimetre = unit('length', 'cm', 0.01, 'centimetre', 'centimetres', 'centimeter', 'centimeters');
export const metre = unit('length', 'm', 1, 'metre', 'metres', 'meter', 'meters');
export const micrometre = unit('length', 'µm', 1e-6, 'um', 'micron', 'microns', 'micrometre', 'micrometres');
export const inch = unit('length', 'in', inchMetres, 'inch', 'inches', 'ins', '"', '″', "''");
export const thou = unit('length', 'thou', 0.0000254, 'thous', 'mil', 'mils', 'thousandth', 'thousandths');
export const foot = unit('length', 'ft', 0.3048, 'foot', 'feet', "'", '′');
export const lengths = [millimetre, centimetre, metre, micrometre, inch, thou, foot] as const;

export const squareMillimetre = unit('area', 'mm²', 1e-6, 'sqmm');
export const squareCentimetre = unit('area', 'cm²', 1e-4, 'sqcm');
export const squareMetre = unit('area', 'm²', 1, 'sqm');
export const squareInch = unit('area', 'in²', inchMetres ** 2, 'sqin');
export const areas = [squareMillimetre, squareCentimetre, squareMetre, squareInch] as const;

export const litre = unit('volume', 'l', 0.001, 'L', 'ltr', 'litre', 'litres', 'liter', 'liters', 'dm³');
export const millilitre = unit('volume', 'ml', 1e-6, 'mL', 'millilitre', 'millilitres', 'milliliter', 'milliliters');
export const cubicCentimetre = unit('volume', 'cc', 1e-6, 'cm³', 'ccm', 'cucm', 'ccs');
export const cubicMetre = unit('volume', 'm³', 1);
export const cubicInch = unit(
  'volume',
  'in³',
  inchMetres ** 3,
  'cuin',
  'cuins',
  'cubicinch',
  'cubicinches',
  'ci',
  'cid',
);
export const imperialGallons = unit(
  'volume',
  'imp gal',
  imperialGallon,
  'ukgal',
  'galimp',
  'galuk',
  'impgallon',
  'impgallons',
  'imperialgallon',
  'imperialgallons',
  'ukgallon',
  'ukgallons',
);
export const usGallons = unit('volume', 'US gal', usGallon, 'galus', 'usgallon', 'usgallons');
export const imperialQuart = unit(
  'volume',
  'imp qt',
  imperialGallon / 4,
  'ukqt',
  'qtimp',
  'impquart',
  'impquarts',
  'imperialquart',
  'imperialquarts',
);
export const usQuart = unit('volume', 'US qt', usGallon / 4, 'qtus', 'usquart', 'usquarts', 'usqts');
export const imperialPint = unit(
  'volume',
  'imp pt',
  imperialGallon / 8,
  'ukpt',
  'ptimp',
  'imppint',
  'imppints',
  'imperialpint',
  'imperialpints',
  'imppts',
);
export const usPint = unit('volume', 'US pt', usGallon / 8, 'ptus', 'uspint', 'uspints', 'uspts');
export const imperialFluidOunce = unit(
  'volume',
  'imp fl oz',
  imperialGallon / 160,
  'ukfloz',
  'flozimp',
  'impoz',
  'imperialfloz',
  'impfluidounce',
  'impfluidounces',
);
export const usFluidOunce = unit(
  'volume',
  'US fl oz',
  usGallon / 128,
  'flozus',
  'usoz',
  'usfluidounce',
  'usfluidounces',
);
export const volumes = [
  litre,
  millilitre,
  cubicCentimetre,
  cubicMetre,
  cubicInch,
  imperialGallons,
  usGallons,
  imperialQuart,
  usQuart,
  imperialPint,
  usPint,
  imperialFluidOunce,
  usFluidOunce,
] as const;

const degreeWords = ['deg', 'degs', 'degree', 'degrees'] as const;
export const degree = unit('angle', '°', Math.PI / 180, ...degreeWords);
export const radian = unit('angle', 'rad', 1, 'radian', 'radians');
export const arcMinute = unit('angle', 'arcmin', Math.PI / 10800, 'minuteofarc', 'minutesofarc');
export const angles = [degree, radian, arcMinute] as const;

export const crankDegree = unit(
  'crank angle',
  '°',
  Math.PI / 180,
  ...degreeWords,
  '°crank',
  'degcrank',
  'degreescrank',
  '°ca',
);
export const crankAngles = [crankDegree] as const;

export const turn = unit('turns', 'turns', 1, 'turn', 'revs', 'rev', 'revolution', 'revolutions');
export const turnsUnits = [turn] as const;
