// The final chain: length, centre distance, wear, and what is left of the adjustment.
import { millimetre, one, percent } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying } from './input.ts';

/** Links (pitches) of a chain over two sprockets at a centre distance. X = 2C/p + (z₁+z₂)/2 + ((z₂−z₁)/2π)² p/C (ISO 606 form). */
export function chainLinks(centre: number, pitch: number, small: number, large: number): number {
  return (2 * centre) / pitch + (small + large) / 2 + (((large - small) / (2 * Math.PI)) ** 2 * pitch) / centre;
}

/** Centre distance for so many links; NaN when the chain is too short. C = p/4 · [b + √(b² − 8((z₂−z₁)/2π)²)], b = X − (z₁+z₂)/2. */
export function chainCentre(links: number, pitch: number, small: number, large: number): number {
  const b = links - (small + large) / 2;
  return (pitch / 4) * (b + Math.sqrt(b ** 2 - 8 * ((large - small) / (2 * Math.PI)) ** 2));
}

const sprockets = {
  pitch: quantity('p', 'pitch', millimetre, { above: 0, usual: [6, 26] }),
  small: quantity('z₁', 'teeth of the gearbox sprocket', one, { low: 6, high: 150, whole: true }),
  large: quantity('z₂', 'teeth of the wheel sprocket', one, { low: 6, high: 150, whole: true }),
} as const;

export const chainLength = calculation({
  id: 'chain-length',
  name: 'Chain length',
  purpose: 'Links for a centre distance, rounded up to an even number, and the length to order.',
  formula: 'X = 2C/p + (z₁ + z₂)/2 + ((z₂ − z₁)/2π)² · p/C',
  inputs: { ...sprockets, centre: quantity('C', 'centre distance', millimetre, { above: 0 }) },
  outputs: {
    exact: result('X', 'links by the formula', one, 4),
    links: result('', 'links to order', one, 0),
    length: result('', 'length by the formula', millimetre, 2),
  },
  range:
    'Centre distance of at least the sprockets’ radii together. Rounded up to even, so that one clip link closes it.',
  source: 'ISO 606 form, as in Jindal, Machine Design.',
  tables: ['values-chain', 'chain-sizes'],
  example: {
    given: { pitch: '12.7 mm', small: '14', large: '38', centre: '530 mm' },
    gives: { exact: '109.8142', links: '110' },
  },
  work: (given) => {
    const [pitch, small, large, centre] = [
      given.number('pitch', millimetre),
      given.number('small', one),
      given.number('large', one),
      given.number('centre', millimetre),
    ];
    const exact = chainLinks(centre, pitch, small, large);
    if (centre < ((small + large) * pitch) / (2 * Math.PI))
      given.doubt('calculation-out-of-range', 'the sprockets would touch at this centre distance');
    return { exact, links: 2 * Math.ceil(exact / 2 - 1e-9), length: exact * pitch };
  },
});

export const chainCentreDistance = calculation({
  id: 'chain-centre',
  name: 'Centre distance of a chain',
  purpose: 'Where the spindle comes to lie with so many links, and how much a worn chain moves it.',
  formula: 'C = p/4 · [b + √(b² − 8 ((z₂ − z₁)/2π)²)],  b = X − (z₁ + z₂)/2',
  inputs: {
    ...sprockets,
    links: quantity('X', 'links', one, { low: 10, high: 400 }),
    wear: quantity('', 'elongation', percent, { optional: true, low: 0, high: 10 }),
  },
  outputs: {
    centre: result('C', 'centre distance', millimetre, 3),
    moved: result('', 'further back by wear', millimetre, 1),
  },
  range: 'Taut chain; the lower run as if straight.',
  source: 'ISO 606 form, as in Jindal, Machine Design.',
  tables: ['values-chain'],
  example: {
    given: { pitch: '12.7 mm', small: '14', large: '38', links: '110', wear: '1 %' },
    gives: { centre: '531.185 mm', moved: '7.0 mm' },
  },
  work: (given) => {
    const [pitch, small, large, links] = [
      given.number('pitch', millimetre),
      given.number('small', one),
      given.number('large', one),
      given.number('links', one),
    ];
    const centre = chainCentre(links, pitch, small, large);
    const wear = given.maybe('wear', percent);
    if (Number.isNaN(centre)) {
      given.doubt('calculation-out-of-range', 'a chain of so few links does not go round these sprockets');
      return {};
    }
    const worn = wear === undefined ? undefined : chainCentre(links * (1 + wear / 100), pitch, small, large) - centre;
    return { centre, moved: worn };
  },
});

export const chainWear = calculation({
  id: 'chain-wear',
  name: 'Chain wear',
  purpose:
    'Elongation over so many pitches against the maker’s limit or, without one, against common rules, both named.',
  formula: 'e = L/(k p) − 1',
  inputs: {
    length: quantity('L', 'length over k pitches, taut', millimetre, { above: 0 }),
    pitches: quantity('k', 'pitches measured', one, { low: 2, high: 200, whole: true }),
    pitch: quantity('p', 'pitch', millimetre, { above: 0 }),
    limit: quantity('', 'maker’s limit for this length', millimetre, { optional: true, above: 0 }),
    teeth: quantity('N', 'teeth of the larger sprocket', one, { optional: true, low: 6, whole: true }),
  },
  outputs: {
    elongation: result('e', 'elongation', percent, 2),
    'common limit': result('', 'motorcycle practice', percent, 1),
    'industrial limit': result('', 'industrial rule', percent, 4),
    left: result('', 'left to the maker’s limit', millimetre, 1),
    verdict: saying('verdict'),
  },
  range: 'Measure pin to pin in the tightest place, 20 pitches or more. The maker’s limit governs where there is one.',
  source:
    'Industrial rule 3 %, or 200/N % above 66 teeth (ANSI practice); 2 % is common motorcycle practice, no standard.',
  tables: ['values-chain'],
  example: {
    given: { length: '256.54 mm', pitches: '20', pitch: '12.7 mm' },
    gives: {
      elongation: '1.00 %',
      'common limit': '2.0 %',
      'industrial limit': '3.0000 %',
      verdict: 'under 2 % (common practice) and under 3 % (industrial rule)',
    },
  },
  work: (given) => {
    const length = given.number('length', millimetre);
    const elongation = (length / (given.number('pitches', one) * given.number('pitch', millimetre)) - 1) * 100;
    if (elongation < -0.3)
      given.doubt('calculation-unlikely', 'the chain measures shorter than new: count the pitches again');
    const teeth = given.maybe('teeth', one);
    const industrial = teeth !== undefined && teeth > 66 ? 200 / teeth : 3;
    const limit = given.maybe('limit', millimetre);
    const left = limit === undefined ? undefined : limit - length;
    return {
      elongation,
      'common limit': 2,
      'industrial limit': industrial,
      left,
      verdict: chainVerdict(elongation, industrial, left),
    };
  },
});

function chainVerdict(elongation: number, industrial: number, left: number | undefined): string {
  if (left !== undefined) return left < 0 ? 'past the maker’s limit' : 'inside the maker’s limit';
  const rule = teethRule(industrial);
  if (elongation < Math.min(2, industrial)) return 'under 2 % (common practice) and under ' + rule;
  if (elongation < industrial) return 'past 2 % (common practice), under ' + rule;
  return 'past ' + rule;
}

function teethRule(industrial: number): string {
  return industrial === 3 ? '3 % (industrial rule)' : '200/N (industrial rule for many teeth)';
}

export const wornLength = calculation({
  id: 'chain-worn-length',
  name: 'Length of a worn chain',
  purpose: 'The length over so many pitches at an elongation, to mark on a rule.',
  formula: 'L = k p (1 + e)',
  inputs: {
    pitches: quantity('k', 'pitches', one, { low: 1, high: 400, whole: true }),
    pitch: quantity('p', 'pitch', millimetre, { above: 0 }),
    elongation: quantity('e', 'elongation', percent, { low: 0, high: 10 }),
  },
  outputs: { length: result('L', 'length', millimetre, 3) },
  range: 'Taut chain.',
  source: 'Definition.',
  tables: ['values-chain'],
  example: { given: { pitches: '20', pitch: '12.7 mm', elongation: '2 %' }, gives: { length: '259.080 mm' } },
  work: (given) => ({
    length:
      given.number('pitches', one) *
      given.number('pitch', millimetre) *
      (1 + given.number('elongation', percent) / 100),
  }),
});

export const sprocketDiameter = calculation({
  id: 'sprocket-diameter',
  name: 'Pitch diameter of a sprocket',
  purpose: 'The pitch circle of a sprocket, to see whether it clears and to measure an unknown one.',
  formula: 'D = p/sin(π/z)',
  inputs: {
    pitch: quantity('p', 'pitch', millimetre, { above: 0 }),
    teeth: quantity('z', 'teeth', one, { low: 6, high: 200, whole: true }),
  },
  outputs: { diameter: result('D', 'pitch diameter', millimetre, 4) },
  range: 'Roller chain sprockets.',
  source: 'Geometry; ISO 606.',
  tables: ['values-chain'],
  example: { given: { pitch: '12.7 mm', teeth: '15' }, gives: { diameter: '61.0836 mm' } },
  work: (given) => ({ diameter: given.number('pitch', millimetre) / Math.sin(Math.PI / given.number('teeth', one)) }),
});
