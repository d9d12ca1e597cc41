// Units of electricity and power, and the plain numbers: ratios, shares, counts, specific gravity.
import { inverse, poundForceNewtons, unit } from './unit-make.ts';

export const volt = unit('voltage', 'V', 1, 'volt', 'volts', 'Vdc', 'VDC', 'vac');
export const millivolt = unit('voltage', 'mV', 0.001, 'millivolt', 'millivolts');
export const kilovolt = unit('voltage', 'kV', 1000, 'kilovolt', 'kilovolts');
export const voltages = [volt, millivolt, kilovolt] as const;

export const ampere = unit('current', 'A', 1, 'amp', 'amps', 'ampere', 'amperes');
export const milliampere = unit('current', 'mA', 0.001, 'milliamp', 'milliamps');
export const currents = [ampere, milliampere] as const;

export const ohm = unit('resistance', 'Ω', 1, 'ohm', 'ohms', 'R');
export const kilohm = unit('resistance', 'kΩ', 1000, 'kohm', 'kohms', 'kilohm', 'kilohms', 'kiloohm', 'k');
export const megohm = unit('resistance', 'MΩ', 1e6, 'Mohm', 'megohm', 'megohms');
export const milliohm = unit('resistance', 'mΩ', 0.001, 'mohm', 'milliohm', 'milliohms');
export const resistances = [ohm, kilohm, megohm, milliohm] as const;

export const microfarad = unit('capacitance', 'µF', 1e-6, 'uF', 'mfd', 'microfarad', 'microfarads');
export const nanofarad = unit('capacitance', 'nF', 1e-9, 'nanofarad', 'nanofarads');
export const picofarad = unit('capacitance', 'pF', 1e-12, 'picofarad', 'picofarads');
export const capacitances = [microfarad, nanofarad, picofarad] as const;

export const watt = unit('power', 'W', 1, 'watt', 'watts');
export const kilowatt = unit('power', 'kW', 1000, 'kilowatt', 'kilowatts');
export const horsepower = unit('power', 'hp', 550 * 0.3048 * poundForceNewtons, 'bhp', 'horsepower');
export const metricHorsepower = unit('power', 'PS', 735.49875, 'cv', 'ch', 'metrichp');
export const powers = [watt, kilowatt, horsepower, metricHorsepower] as const;

export const ampereHour = unit('charge', 'Ah', 3600, 'A·h', 'amphour', 'amphours', 'amperehour', 'amperehours');
export const milliampereHour = unit('charge', 'mAh', 3.6);
export const charges = [ampereHour, milliampereHour] as const;

/** `25:1` is 25 of this unit; `1:25` is 25 of the next. */
export const toOne = unit('ratio', ':1', 1);
export const oneTo = inverse('ratio', '1:', 1);
export const ratios = [toOne, oneTo] as const;

export const percent = unit('share', '%', 0.01, 'percent', 'pct');
export const shares = [percent] as const;

export const percentHumidity = unit('relative humidity', '%', 0.01, 'percent', 'pct', '%rh', 'rh');
export const relativeHumidities = [percentHumidity] as const;

/** A bare number, or one followed by what is counted; the words are not kept. */
export const one = unit(
  'count',
  '',
  1,
  'off',
  'x',
  '×',
  'pcs',
  'pieces',
  'times',
  'teeth',
  'links',
  'kicks',
  'spokes',
  'holes',
  'cycles',
);
export const counts = [one] as const;

export const specificGravity = unit('specific gravity', '', 1, 'SG', 'sg', 'kg/l');
export const specificGravities = [specificGravity] as const;
