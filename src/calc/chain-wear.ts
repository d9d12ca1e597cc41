// Wear of the final chain over so many pitches, against the maker’s limit or common rules.
import { millimetre, one, percent } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying } from './input.ts';

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
    'industrial limit': result('', 'industrial rule', percent, 2),
    left: result('', 'left to the maker’s limit', millimetre, 1, 'length'),
    verdict: saying('verdict'),
  },
  range: 'Measure pin to pin in the tightest place, 20 pitches or more. The maker’s limit governs where there is one.',
  source:
    'Industrial rule 3 %, or 200/N % above 66 teeth (ANSI practice); 2 % is common motorcycle practice, no standard.',
  tables: ['values-chain'],
  cautions: ['chain-fingers'],
  example: {
    given: { length: '256.54 mm', pitches: '20', pitch: '12.7 mm' },
    gives: {
      elongation: '1.00 %',
      'common limit': '2.0 %',
      'industrial limit': '3.00 %',
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
  outputs: { length: result('L', 'length', millimetre, 3, 'pitch') },
  range: 'Taut chain.',
  source: 'Definition.',
  tables: ['values-chain'],
  cautions: ['chain-fingers'],
  example: { given: { pitches: '20', pitch: '12.7 mm', elongation: '2 %' }, gives: { length: '259.080 mm' } },
  work: (given) => ({
    length:
      given.number('pitches', one) *
      given.number('pitch', millimetre) *
      (1 + given.number('elongation', percent) / 100),
  }),
});
