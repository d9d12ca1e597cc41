// Compression pressure on the kickstart: what is to be expected, corrected for altitude, and how readings compare.
import {
  bar,
  cubicCentimetre,
  hectopascalAbsolute,
  kelvin,
  metre,
  one,
  pascalAbsolute,
  percent,
  toOne,
} from '../quantity/units.ts';
import { geopotential, standardAir } from './atmosphere.ts';
import { calculation } from './calculation.ts';
import { list, quantity, result, saying } from './input.ts';

/** Gauge pressure in the unit of `ambient`. p = p₀ (rⁿ − 1): polytropic compression from ambient without leak. */
export function gaugeAfterCompression(ambient: number, ratio: number, exponent: number): number {
  return ambient * (ratio ** exponent - 1);
}

/** Exponents of cold cranking between which readings of sound engines lie (common practice). */
const crankingExponents = [1.2, 1.35] as const;
const middleExponent = 1.28;

export const crankingPressure = calculation({
  id: 'cranking-pressure',
  name: 'Cranking pressure to be expected',
  purpose: 'The band in which a compression reading of a sound engine lies, here, at this altitude.',
  formula: 'p = p₀ (rⁿ − 1),  n = 1.20 to 1.35;  with a gauge of dead volume V_g: r_g = (r V_c + V_g)/(V_c + V_g)',
  inputs: {
    ratio: quantity('r', 'effective compression ratio (from port or valve closing)', toOne, { above: 1, high: 25 }),
    ambient: quantity('p₀', 'air pressure', hectopascalAbsolute, { optional: true, above: 0, usual: [600, 1080] }),
    altitude: quantity('Z', 'altitude, when there is no barometer', metre, { optional: true, low: -500, high: 5000 }),
    exponent: quantity('n', 'polytropic exponent', one, { optional: true, low: 1, high: 1.67 }),
    'clearance volume': quantity('V_c', 'clearance volume', cubicCentimetre, { optional: true, above: 0 }),
    'gauge volume': quantity('V_g', 'dead volume of gauge and hose before its valve', cubicCentimetre, {
      optional: true,
      low: 0,
    }),
    reading: quantity('', 'reading', bar, { optional: true, low: 0 }),
  },
  outputs: { pressure: result('p', 'gauge pressure', bar, 1, 'reading'), verdict: saying('the reading') },
  range:
    'Throttle and choke wide open, plugs out, kicked until the needle stops. The full-stroke ratio gives too much; use the ratio from port or valve closing. Without an air pressure the standard one of the altitude is taken, 1013 hPa at the sea.',
  source: 'Polytropic compression; the exponents of cranking are common practice (memory).',
  tables: ['values-engine', 'values-atmosphere'],
  cautions: ['spark-test', 'lead-open', 'tappets-cold'],
  example: { given: { ratio: '7.0:1' }, gives: { pressure: '9.5 to 13.0 bar' } },
  work: (given) => {
    const standard = standardAir(geopotential(given.maybe('altitude', metre) ?? 0)).pressure / 100;
    const ambient = (given.maybe('ambient', hectopascalAbsolute) ?? standard) / 1000;
    const ratio = withGauge(
      given.number('ratio', toOne),
      given.maybe('clearance volume', cubicCentimetre),
      given.maybe('gauge volume', cubicCentimetre),
    );
    const exponent = given.maybe('exponent', one);
    const at = (n: number): number => gaugeAfterCompression(ambient, ratio, n);
    if (exponent !== undefined) return { pressure: at(exponent) };
    const [low, high] = [at(crankingExponents[0]), at(crankingExponents[1])];
    const reading = given.maybe('reading', bar);
    if (reading !== undefined && reading > 1.05 * high) {
      given.doubt(
        'compression-above-expected',
        'the reading is above what this ratio can give: carbon, an oily bore, a skimmed head or the wrong ratio',
      );
    }
    return {
      pressure: { value: at(middleExponent), low, high },
      verdict: reading === undefined ? undefined : compare(reading, low, high),
    };
  },
});

function withGauge(ratio: number, clearance: number | undefined, gauge: number | undefined): number {
  if (clearance === undefined || gauge === undefined) return ratio;
  return (ratio * clearance + gauge) / (clearance + gauge);
}

function compare(reading: number, low: number, high: number): string {
  if (reading > 1.05 * high) return 'above the band';
  if (reading < low) return 'below the band';
  return 'in the band';
}

export const compressionState = calculation({
  id: 'compression-state',
  name: 'State after compression',
  purpose: 'Pressure and temperature at the end of compression, to check a book example or a claim.',
  formula: 'p₂ = p₁ rⁿ;  T₂ = T₁ rⁿ⁻¹',
  inputs: {
    ratio: quantity('r', 'compression ratio', toOne, { above: 1 }),
    exponent: quantity('n', 'polytropic exponent', one, { optional: true, low: 1, high: 1.67 }),
    pressure: quantity('p₁', 'pressure before, absolute', pascalAbsolute, { optional: true, above: 0 }),
    temperature: quantity('T₁', 'temperature before', kelvin, { optional: true, above: 0 }),
  },
  outputs: {
    pressure: result('p₂', 'pressure after, absolute', pascalAbsolute, 0, 'pressure'),
    temperature: result('T₂', 'temperature after', kelvin, 1, 'temperature'),
  },
  range: 'Ideal gas; n = 1.4 without heat loss unless given.',
  source: 'Rajput; Gupta: worked examples.',
  tables: ['values-engine'],
  cautions: ['spark-test', 'lead-open', 'tappets-cold'],
  example: { given: { ratio: '8:1', temperature: '300 K' }, gives: { temperature: '689.2 K' } },
  work: (given) => {
    const [ratio, exponent] = [given.number('ratio', toOne), given.maybe('exponent', one) ?? 1.4];
    const [pressure, temperature] = [given.maybe('pressure', pascalAbsolute), given.maybe('temperature', kelvin)];
    return {
      pressure: pressure === undefined ? undefined : pressure * ratio ** exponent,
      temperature: temperature === undefined ? undefined : temperature * ratio ** (exponent - 1),
    };
  },
});

export const compressionSpread = calculation({
  id: 'compression-spread',
  name: 'Compression: dry, wet and between cylinders',
  purpose: 'How far cylinders differ and what oil in the bore changes, so that rings are told from valves.',
  formula: 'spread = (p_max − p_min)/p_max;  rise = (p_wet − p_dry)/p_dry',
  inputs: {
    dry: list('p_dry', 'dry readings, one a cylinder', bar, { above: 0 }),
    wet: list('p_wet', 'readings with oil in the bore, in the same order', bar, { optional: true, above: 0 }),
    'allowed spread': quantity('', 'allowed between cylinders', percent, { optional: true, above: 0, high: 100 }),
  },
  outputs: {
    spread: result('', 'between cylinders', percent, 0),
    'largest rise': result('', 'largest rise with oil', percent, 0),
    says: saying('what it points to'),
  },
  range:
    'Like compared with like: same gauge, same warmth, same number of kicks. Without a value from the book 10 % between cylinders and a rise of 10 % are common practice.',
  source: 'Common practice of the trade.',
  tables: [],
  cautions: ['spark-test', 'lead-open', 'tappets-cold'],
  example: {
    given: { dry: '6.8 bar; 5.4 bar', wet: '7.1 bar; 7.0 bar' },
    gives: { spread: '21 %', 'largest rise': '30 %', says: 'cylinders differ; oil lifts the reading: rings or bore' },
  },
  work: (given) => {
    const [dry, wet] = [given.list('dry', bar), given.list('wet', bar)];
    if (wet.length > 0 && wet.length !== dry.length) {
      given.doubt('calculation-value-wrong', 'there must be one wet reading for each dry one');
      return {};
    }
    const spread = ((Math.max(...dry) - Math.min(...dry)) / Math.max(...dry)) * 100;
    const rises = wet.map((value, index) => (value / (dry[index] ?? value) - 1) * 100);
    const rise = rises.length === 0 ? undefined : Math.max(...rises);
    return {
      spread,
      'largest rise': rise,
      says: pointsTo(dry.length, spread, rise, given.maybe('allowed spread', percent) ?? 10),
    };
  },
});

/** `cylinders differ; oil lifts the reading: rings or bore`; a single cylinder has none to agree with. */
function pointsTo(cylinders: number, spread: number, rise: number | undefined, allowed: number): string | undefined {
  const between = spread > allowed ? 'cylinders differ' : 'cylinders agree';
  const oil =
    rise !== undefined && rise > 10
      ? 'oil lifts the reading: rings or bore'
      : 'oil changes little: valves, gasket or plug seat before rings';
  const told = [...(cylinders > 1 ? [between] : []), ...(rise === undefined ? [] : [oil])];
  return told.length === 0 ? undefined : told.join('; ');
}
