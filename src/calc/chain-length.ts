// Length of the final chain, and the centre distance that it gives.
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
    length: result('', 'length by the formula', millimetre, 2, 'centre'),
  },
  range:
    'Centre distance of at least the sprockets’ radii together. Rounded up to even, so that one clip link closes it.',
  source: 'ISO 606 form, as in Jindal, Machine Design.',
  tables: ['values-chain', 'chain-sizes'],
  cautions: ['chain-fingers', 'clip-end-forward'],
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
    centre: result('C', 'centre distance', millimetre, 3, 'pitch'),
    moved: result('', 'further back by wear', millimetre, 1, 'pitch'),
  },
  range: 'Taut chain; the lower run as if straight.',
  source: 'ISO 606 form, as in Jindal, Machine Design.',
  tables: ['values-chain'],
  cautions: ['chain-fingers', 'clip-end-forward'],
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

export const sprocketDiameter = calculation({
  id: 'sprocket-diameter',
  name: 'Pitch diameter of a sprocket',
  purpose: 'The pitch circle of a sprocket, to see whether it clears and to measure an unknown one.',
  formula: 'D = p/sin(π/z)',
  inputs: {
    pitch: quantity('p', 'pitch', millimetre, { above: 0 }),
    teeth: quantity('z', 'teeth', one, { low: 6, high: 200, whole: true }),
  },
  outputs: { diameter: result('D', 'pitch diameter', millimetre, 4, 'pitch') },
  range: 'Roller chain sprockets.',
  source: 'Geometry; ISO 606.',
  tables: ['values-chain'],
  cautions: ['chain-fingers'],
  example: { given: { pitch: '12.7 mm', teeth: '15' }, gives: { diameter: '61.0836 mm' } },
  work: (given) => ({ diameter: given.number('pitch', millimetre) / Math.sin(Math.PI / given.number('teeth', one)) }),
});

export const chainAdjustment = calculation({
  id: 'chain-adjustment',
  name: 'Adjustment left for the chain',
  purpose: 'How much more wear the adjusters can take up, and whether a chain two links shorter would fit.',
  formula: 'e = 2 Δ/(X p);  two links are 2 p, so the spindle comes forward by about p',
  inputs: {
    travel: quantity('Δ', 'travel left on the adjusters, backwards', millimetre, { low: 0, high: 200 }),
    used: quantity('', 'travel used so far, from the front stop', millimetre, { optional: true, low: 0, high: 200 }),
    pitch: quantity('p', 'pitch', millimetre, { above: 0 }),
    links: quantity('X', 'links', one, { low: 10, high: 400 }),
  },
  outputs: {
    elongation: result('e', 'elongation still taken up', percent, 2),
    'forward for two links': result('', 'two links less bring the spindle forward by', millimetre, 1, 'travel'),
    says: saying('two links less'),
  },
  range: 'First order: each run of the chain takes half of the elongation. A worn chain is renewed, not shortened.',
  source: 'Geometry.',
  tables: [],
  cautions: ['chain-fingers'],
  example: {
    given: { travel: '8 mm', used: '14 mm', pitch: '12.7 mm', links: '108' },
    gives: { elongation: '1.17 %', 'forward for two links': '12.7 mm', says: 'would fit' },
  },
  work: (given) => {
    const pitch = given.number('pitch', millimetre);
    const used = given.maybe('used', millimetre);
    const says = used === undefined ? undefined : used >= pitch ? 'would fit' : 'would not reach';
    return {
      elongation: (200 * given.number('travel', millimetre)) / (given.number('links', one) * pitch),
      'forward for two links': pitch,
      says,
    };
  },
});
