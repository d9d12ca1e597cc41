// The standard atmosphere and the density of humid air: what an engine breathes here, today.
import {
  kelvin,
  kilogramPerCubicMetre,
  metre,
  pascalAbsolute,
  celsius,
  percent,
  percentHumidity,
} from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result, words } from './input.ts';

const earthRadius = 6_356_766;
const gasConstant1976 = 8.31432;
const airMolar1976 = 0.0289644;

/** Geopotential altitude in metres from geometric altitude. H = r₀ Z/(r₀ + Z). */
export function geopotential(altitude: number): number {
  return (earthRadius * altitude) / (earthRadius + altitude);
}

/** Temperature (K), pressure (Pa) and density (kg/m³) of the standard atmosphere at a geopotential altitude in metres, −1000 to 11 000. */
export function standardAir(height: number): {
  readonly temperature: number;
  readonly pressure: number;
  readonly density: number;
} {
  const temperature = 288.15 - 0.0065 * height;
  const exponent = (9.80665 * airMolar1976) / (gasConstant1976 * 0.0065);
  const pressure = 101_325 * (temperature / 288.15) ** exponent;
  return { temperature, pressure, density: (pressure * airMolar1976) / (gasConstant1976 * temperature) };
}

export const standardAtmosphere = calculation({
  id: 'standard-atmosphere',
  name: 'Standard atmosphere',
  purpose: 'The air that the standard assumes at an altitude, when no barometer is at hand.',
  formula: 'T = 288.15 − 0.0065 H;  p = 101 325 (T/288.15)^5.25588;  ρ = p M/(R T)',
  inputs: {
    altitude: quantity('Z', 'altitude', metre, { low: -500, high: 11_000, usual: [-100, 5000] }),
    kind: words('', 'kind of altitude', { optional: true, among: ['geometric', 'geopotential'] }),
  },
  outputs: {
    pressure: result('p', 'pressure', pascalAbsolute, 0),
    temperature: result('T', 'temperature', kelvin, 2),
    density: result('ρ', 'density', kilogramPerCubicMetre, 4),
    'share of sea level': result('', 'density against sea level', percent, 1),
  },
  range: '−500 to 11 000 m. An altitude from a map is geometric, which is taken unless said.',
  source: 'US Standard Atmosphere 1976; ISO 2533.',
  tables: ['values-atmosphere'],
  cautions: [],
  example: {
    given: { altitude: '1500 m' },
    gives: { pressure: '84 560 Pa', density: '1.0581 kg/m³', 'share of sea level': '86.4 %' },
  },
  work: (given) => {
    const altitude = given.number('altitude', metre);
    const air = standardAir(given.words('kind') === 'geopotential' ? altitude : geopotential(altitude));
    return { ...air, 'share of sea level': (air.density / 1.225) * 100 };
  },
});

/** Saturation pressure over water in Pa at °C. Magnus form of the WMO, Buck 1996, and the form inside CIPM-2007. */
export function saturationMagnus(celsiusDegrees: number): number {
  return 611.2 * Math.exp((17.62 * celsiusDegrees) / (243.12 + celsiusDegrees));
}
export function saturationBuck(celsiusDegrees: number): number {
  return 611.21 * Math.exp((18.678 - celsiusDegrees / 234.5) * (celsiusDegrees / (257.14 + celsiusDegrees)));
}
function saturationCipm(kelvins: number): number {
  return Math.exp(1.2378847e-5 * kelvins ** 2 - 1.9121316e-2 * kelvins + 33.93711047 - 6343.1645 / kelvins);
}

/**
 * Density of humid air in kg/m³ (CIPM-2007, 400 ppm carbon dioxide) from pressure in Pa, °C, and relative humidity 0 to 1.
 * Made for 15 to 27 °C and 600 to 1100 hPa; within 0.05 % of a printed table from 0 to 60 °C. Coefficients from memory.
 */
export function humidAirDensity(pressure: number, celsiusDegrees: number, humidity: number): number {
  const t = celsiusDegrees;
  const T = t + 273.15;
  const enhancement = 1.00062 + 3.14e-8 * pressure + 5.6e-7 * t ** 2;
  const x = (humidity * enhancement * saturationCipm(T)) / pressure;
  const virial =
    1.58123e-6 -
    2.9331e-8 * t +
    1.1043e-10 * t ** 2 +
    (5.707e-6 - 2.051e-8 * t) * x +
    (1.9898e-4 - 2.376e-6 * t) * x ** 2;
  const compressibility = 1 - (pressure / T) * virial + (pressure / T) ** 2 * (1.83e-11 - 0.765e-8 * x ** 2);
  const dry = 28.96546e-3;
  return ((pressure * dry) / (compressibility * 8.314472 * T)) * (1 - x * (1 - 18.01528e-3 / dry));
}

export const humidAir = calculation({
  id: 'humid-air',
  name: 'Density of humid air',
  purpose: 'What the air weighs here and now, against the air an engine was jetted in.',
  formula: 'ρ = p M_a/(Z R T) · [1 − x_v (1 − M_v/M_a)],  x_v = h f p_sv/p',
  inputs: {
    pressure: quantity('p', 'air pressure at this place (not reduced to sea level)', pascalAbsolute, {
      optional: true,
      above: 0,
      usual: [50_000, 108_000],
    }),
    altitude: quantity('Z', 'altitude, when there is no barometer', metre, { optional: true, low: -500, high: 11_000 }),
    temperature: quantity('t', 'temperature', celsius, { low: -40, high: 60, usual: [-20, 45] }),
    humidity: quantity('h', 'relative humidity', percentHumidity, { optional: true, low: 0, high: 100 }),
    'dew point': quantity('', 'dew point, instead of humidity', celsius, { optional: true, low: -40, high: 60 }),
  },
  outputs: {
    density: result('ρ', 'density', kilogramPerCubicMetre, 4),
    relative: result('', 'against 20 °C, 1013.25 hPa, 50 %', percent, 1),
    'saturation pressure': result('p_sv', 'saturation pressure over water', pascalAbsolute, 1),
  },
  range:
    '0 to 60 °C, 600 to 1100 hPa. Without a barometer the standard pressure of the altitude is taken; without humidity 50 %.',
  source:
    'CIPM-2007, Metrologia 45 (2008) 149 (coefficients from memory); Buck 1996 for the saturation pressure shown.',
  tables: ['values-atmosphere'],
  cautions: [],
  example: {
    given: { pressure: '101325 Pa', temperature: '30 °C', humidity: '80 %' },
    gives: { density: '1.1500 kg/m³' },
  },
  work: (given) => {
    const altitude = given.maybe('altitude', metre);
    const pressure = given.maybe('pressure', pascalAbsolute) ?? standardAir(geopotential(altitude ?? 0)).pressure;
    if (given.figure('pressure') === undefined && altitude === undefined)
      given.doubt('calculation-value-missing', 'neither an air pressure nor an altitude is given');
    const t = given.number('temperature', celsius);
    const dew = given.maybe('dew point', celsius);
    const fromDew = dew === undefined ? undefined : saturationCipm(dew + 273.15) / saturationCipm(t + 273.15);
    const density = humidAirDensity(pressure, t, fromDew ?? (given.maybe('humidity', percentHumidity) ?? 50) / 100);
    return {
      density,
      relative: (density / humidAirDensity(101_325, 20, 0.5)) * 100,
      'saturation pressure': saturationBuck(t),
    };
  },
});

export const saturationPressure = calculation({
  id: 'saturation-pressure',
  name: 'Saturation pressure of water',
  purpose: 'The pressure of water vapour in saturated air, for dew in tanks and for the density of air.',
  formula: 'Magnus: 611.2 exp(17.62 t/(243.12 + t));  Buck: 611.21 exp((18.678 − t/234.5)(t/(257.14 + t)))',
  inputs: { temperature: quantity('t', 'temperature', celsius, { low: -40, high: 60 }) },
  outputs: { magnus: result('p', 'by Magnus', pascalAbsolute, 2), buck: result('p', 'by Buck', pascalAbsolute, 2) },
  range: 'Over water, −40 to 60 °C. Magnus lies 0.3 % under the steam tables at 20 °C, Buck 0.04 %.',
  source: 'WMO (Magnus, Sonntag); Buck 1996.',
  tables: ['values-atmosphere'],
  cautions: [],
  example: { given: { temperature: '20 °C' }, gives: { magnus: '2332.60 Pa', buck: '2338.34 Pa' } },
  work: (given) => {
    const t = given.number('temperature', celsius);
    return { magnus: saturationMagnus(t), buck: saturationBuck(t) };
  },
});
