// Mixture against the density of air: what altitude and weather do to it, and the jet that brings it back.
import { kilogramPerCubicMetre, millimetre, one, percent, squareMillimetre } from '../quantity/units.ts';
import { geopotential, humidAirDensity, standardAir } from './atmosphere.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying, words } from './input.ts';

export const mixtureShift = calculation({
  id: 'mixture-shift',
  name: 'Mixture in other air',
  purpose: 'How rich a carburettor becomes when the air thins.',
  formula: '(A/F) = (A/F)₀ · √(ρ/ρ₀)',
  inputs: {
    ratio: quantity('(A/F)₀', 'air to fuel by mass before', one, { above: 0, usual: [8, 20] }),
    'density before': quantity('ρ₀', 'density of the air before', kilogramPerCubicMetre, { above: 0 }),
    'density now': quantity('ρ', 'density of the air now', kilogramPerCubicMetre, { above: 0 }),
  },
  outputs: { ratio: result('A/F', 'air to fuel by mass now', one, 2), richer: result('', 'richer by', percent, 1) },
  range: 'A simple carburettor at one opening and speed.',
  source: 'Rajput 11.11; Gupta 9.7; Mathur and Sharma 11.7.',
  tables: ['values-atmosphere'],
  cautions: ['lean-mixture', 'running-engine', 'hot-parts'],
  example: {
    given: { ratio: '14.7', 'density before': '1.225 kg/m³', 'density now': '1.0581 kg/m³' },
    gives: { ratio: '13.66', richer: '7.6 %' },
  },
  work: (given) => {
    const root = Math.sqrt(
      given.number('density now', kilogramPerCubicMetre) / given.number('density before', kilogramPerCubicMetre),
    );
    return { ratio: given.number('ratio', one) * root, richer: (1 / root - 1) * 100 };
  },
});

/** Smallest step in which jets are made, in the jet's own number: bore numbers 2 (2/100 mm) on small jets, 5 above 100; flow numbers 5, 10 above 200. */
function jetStep(jet: number, kind: string): number {
  if (kind === 'flow') return jet > 200 ? 10 : 5;
  return jet > 100 ? 5 : 2;
}

export const jetChange = calculation({
  id: 'jet-change',
  name: 'Main jet for other air',
  purpose: 'The jet number that holds the mixture when the air is thinner or thicker.',
  formula: 'flow number: J = J₀ √(ρ/ρ₀);  bore number: J = J₀ (ρ/ρ₀)^¼',
  inputs: {
    jet: quantity('J₀', 'jet fitted', one, { above: 0, usual: [20, 600] }),
    numbering: words('', 'what the number means', { among: ['bore', 'flow'] }),
    'density before': quantity('ρ₀', 'density it was jetted in', kilogramPerCubicMetre, { above: 0 }),
    'density now': quantity('ρ', 'density now', kilogramPerCubicMetre, { above: 0 }),
  },
  outputs: {
    exact: result('J', 'number by the formula', one, 1),
    jet: result('', 'nearest jet', one, 0),
    'area scale': result('', 'jet area, now over before', one, 4),
    'bore scale': result('', 'jet bore, now over before', one, 5),
    needle: saying('needle'),
  },
  range:
    'Main jet at wide throttle. A bore number is the diameter in hundredths of a millimetre, a flow number goes with the flow; they are not the same jet. No finer than jets come: steps are common practice. A plug reading has the last word.',
  source:
    'From A/F ~ √ρ (three textbooks): jet area goes with √ρ, its diameter with ρ^¼. Numbering systems and steps from memory.',
  tables: ['values-atmosphere'],
  cautions: ['petrol', 'lean-mixture', 'running-engine', 'hot-parts'],
  example: {
    given: { jet: '110', numbering: 'bore', 'density before': '1.2 kg/m³', 'density now': '1.0 kg/m³' },
    gives: { exact: '105.1', jet: '105', 'bore scale': '0.95544' },
  },
  work: (given) => {
    const relative =
      given.number('density now', kilogramPerCubicMetre) / given.number('density before', kilogramPerCubicMetre);
    const kind = given.words('numbering');
    const jet = given.number('jet', one);
    const exact = jet * relative ** (kind === 'flow' ? 0.5 : 0.25);
    const nearest = nearestJet(jet, exact, kind);
    return {
      exact,
      jet: nearest,
      'area scale': Math.sqrt(relative),
      'bore scale': relative ** 0.25,
      needle: needleAdvice(relative),
    };
  },
});

/** Jet numbers for a settings card: one row for each altitude (m), one number for each temperature (°C), from a jet proved in a known density. */
export function jetTable(
  jet: { readonly number: number; readonly kind: 'bore' | 'flow'; readonly density: number },
  altitudes: readonly number[],
  temperatures: readonly number[],
): readonly { readonly altitude: number; readonly jets: readonly number[] }[] {
  const power = jet.kind === 'flow' ? 0.5 : 0.25;
  const at = (altitude: number, celsiusDegrees: number): number =>
    nearestJet(
      jet.number,
      jet.number *
        (humidAirDensity(standardAir(geopotential(altitude)).pressure, celsiusDegrees, 0.5) / jet.density) ** power,
      jet.kind,
    );
  return altitudes.map((altitude) => ({ altitude, jets: temperatures.map((one) => at(altitude, one)) }));
}

/** The jet nearest to a number in the steps that jets come in; the fitted one where it is near enough. */
function nearestJet(fitted: number, exact: number, kind: string): number {
  const step = jetStep(fitted, kind);
  return Math.abs(exact - fitted) < step / 2 ? fitted : Math.round(exact / step) * step;
}

/** In words only: a clip groove has no formula. */
function needleAdvice(relative: number): string {
  if (relative < 0.94) return 'thinner air: the needle may want to go down (clip up) one groove';
  if (relative > 1.06) return 'thicker air: the needle may want to come up (clip down) one groove';
  return 'leave the needle';
}

export const jetFlow = calculation({
  id: 'jet-area',
  name: 'Area of a jet',
  purpose: 'Compares jets by area, since flow goes with area.',
  formula: 'A = π/4 · d²',
  inputs: {
    bore: quantity('d', 'bore of the jet', millimetre, { above: 0, high: 10 }),
    other: quantity('d₂', 'bore of the other', millimetre, { optional: true, above: 0, high: 10 }),
  },
  outputs: { area: result('A', 'area', squareMillimetre, 4), more: result('', 'the other flows more by', percent, 1) },
  range: 'Jets of one shape; a bore number 110 is 1.10 mm.',
  source: 'Geometry.',
  tables: [],
  cautions: ['lean-mixture'],
  example: { given: { bore: '1.10 mm', other: '1.15 mm' }, gives: { area: '0.9503 mm²', more: '9.3 %' } },
  work: (given) => {
    const [bore, other] = [given.number('bore', millimetre), given.maybe('other', millimetre)];
    return { area: (Math.PI / 4) * bore ** 2, more: other === undefined ? undefined : ((other / bore) ** 2 - 1) * 100 };
  },
});
