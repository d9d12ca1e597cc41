// Compression that falls with the distance, projected to its limit: only where the same gauge read the same engine in the same condition.
import { bar, kilometre } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { list, quantity } from './input.ts';
import { projectionOutputs, projectionResults } from './projection-results.ts';
import { projectWear } from './wear-projection.ts';
import type { WearPoint } from './wear-projection.ts';

/** Two points lie on a line whatever the engine does. */
const enough = 3;

/** From the last of the highest readings on: until then rings bed in, and the pressure rises. */
function sinceHighest(points: readonly WearPoint[]): readonly WearPoint[] {
  const sorted = points.toSorted((a, b) => a.at - b.at);
  const highest = Math.max(...sorted.map(({ value }) => value));
  return sorted.slice(sorted.findLastIndex(({ value }) => value === highest));
}

/**
 * Rings, bore and valve seats wear with the distance, and cranking pressure falls with them: near enough to a straight line to say
 * when to look again (common practice, no law). Three readings at least, counted from the highest: new rings bed in, and the
 * pressure rises before it falls. `distances` and `readings` as in wear to the limit; the span is that of projectWear.
 */
export const compressionToLimit = calculation({
  id: 'compression-to-limit',
  name: 'Compression towards its limit',
  purpose: 'The span of distance in which cranking pressure that falls evenly reaches its limit.',
  formula: 'least squares line; span where the 90 % prediction band meets the limit',
  inputs: {
    distances: list('d', 'distance at each reading', kilometre, { low: 0 }),
    readings: list('p', 'pressure at each distance', bar, { above: 0 }),
    limit: quantity('p_L', 'limit', bar, { above: 0 }),
    uncertainty: quantity('U', 'expanded uncertainty of a reading', bar, { optional: true, low: 0 }),
  },
  outputs: projectionOutputs,
  range:
    'Three readings or more of one cylinder with one gauge, in one condition (cold or hot, dry or oiled), since rings, bore or valves were renewed; counted from the highest, since new rings bed in first. A pressure that falls at once is a fault to be looked for, and no wear.',
  source:
    'Ordinary least squares with inverse prediction (Fieller), as in wear to the limit. That compression falls in a straight line is common practice, and holds for wear alone.',
  tables: [],
  cautions: ['span-no-promise'],
  example: {
    given: { distances: '2000 km; 6000 km; 10000 km', readings: '8.0 bar; 7.6 bar; 7.2 bar', limit: '5.5 bar' },
    gives: { left: '17 000 km', reached: '27 000 km' },
  },
  work: (given) => {
    const [distances, readings] = [given.list('distances', kilometre), given.list('readings', bar)];
    if (distances.length !== readings.length) {
      given.doubt('calculation-value-wrong', 'there must be one reading for each distance');
      return {};
    }
    const points = sinceHighest(distances.map((at, index) => ({ at, value: readings[index] ?? 0 })));
    const found = projectWear(points, given.number('limit', bar), -1, given.maybe('uncertainty', bar) ?? 0);
    const results = projectionResults(found, Math.max(...distances));
    const few = found.kind === 'measure again' && points.length < enough;
    return few ? { ...results, remark: 'measure again: fewer than three readings since the highest' } : results;
  },
});
