// The verdict and the projection as calculations of the list, so that each has its page, its example and its working.
import { inUnit, of } from '../quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../quantity/read-quantity.ts';
import { readRange } from '../quantity/read-range.ts';
import { kilometre, millimetre } from '../quantity/units.ts';
import { formatDecimal } from '../quantity/decimal.ts';
import { withUnit } from '../figure/print.ts';
import { calculation } from './calculation.ts';
import { list, quantity, result, saying, words } from './input.ts';
import { judge, repeats } from './limit-verdict.ts';
import { projectionOutputs, projectionResults } from './projection-results.ts';
import { projectWear } from './wear-projection.ts';

export const limitVerdict = calculation({
  id: 'limit-verdict',
  name: 'Deciding against a limit',
  purpose:
    'Whether a reading is within the standard, worn but usable, past the limit, or too close to call with this instrument.',
  formula: 'proved inside when the distance to the limit is at least U, proved outside when it is past by U',
  inputs: {
    reading: words('x', 'reading with its unit'),
    uncertainty: words('U', 'expanded uncertainty of the instrument', { optional: true }),
    standard: words('', 'standard', { optional: true }),
    limit: words('', 'limit', { optional: true }),
  },
  outputs: { verdict: saying('verdict'), because: saying('because'), left: saying('left to the limit') },
  range:
    'Any dimension; the reading, the standard and the limit must be of one kind. The guard band is the expanded uncertainty (k = 2).',
  source: 'ISO 14253-1 decision rule and JCGM 106 guard band (from memory).',
  tables: [],
  cautions: ['one-temperature'],
  example: {
    given: { reading: '50.095 mm', uncertainty: '0.01 mm', standard: '50.00 to 50.02 mm', limit: '50.10 mm max' },
    gives: { verdict: 'too close to call', left: '0.005 mm' },
  },
  work: (given) => {
    const reading = readAnyQuantity(given.words('reading'));
    if (!reading.ok) {
      given.doubt('calculation-value-wrong', reading.why.message);
      return {};
    }
    const dimension = reading.value.unit.dimension;
    const [standard, limit] = [given.words('standard'), given.words('limit')].map((text) =>
      text === '' ? undefined : readRange(text, dimension),
    );
    const uncertainty =
      given.words('uncertainty') === '' ? undefined : readQuantity(given.words('uncertainty'), dimension);
    for (const read of [standard, limit, uncertainty]) {
      if (read !== undefined && !read.ok) given.doubt('calculation-value-wrong', read.why.message);
    }
    const [standardRange, limitRange] = [standard, limit].map((read) => (read?.ok === true ? read.value : undefined));
    const half =
      uncertainty?.ok === true
        ? of(inUnit(uncertainty.value.quantity, uncertainty.value.unit), { ...uncertainty.value.unit, offset: 0 })
        : undefined;
    const unit = limitRange?.unit ?? reading.value.unit;
    const judged = judge(reading.value.quantity, half, standardRange, limitRange, unit);
    const left =
      judged.left === undefined ? undefined : withUnit(formatDecimal(judged.left, reading.value.decimals), unit);
    return { verdict: judged.verdict, because: judged.because, left };
  },
});

export const repeatReadings = calculation({
  id: 'repeat-readings',
  name: 'Repeat readings',
  purpose: 'The mean of readings taken again of one thing, and how sure it is.',
  formula: 'x̄ = Σx/n;  U = 2 s/√n',
  inputs: { readings: list('x', 'readings', millimetre) },
  outputs: {
    mean: result('x̄', 'mean', millimetre, 3, 'readings'),
    range: result('R', 'between the largest and the smallest', millimetre, 3, 'readings'),
  },
  range: 'Readings of one thing under one condition; with fewer than three the spread says little.',
  source: 'JCGM 100, type A evaluation (from memory).',
  tables: [],
  cautions: ['one-temperature'],
  example: { given: { readings: '50.06 mm; 50.05 mm; 50.07 mm' }, gives: { mean: '50.060 mm', range: '0.020 mm' } },
  work: (given) => {
    const found = repeats(given.list('readings', millimetre));
    return { mean: { value: found.mean, uncertainty: found.expanded }, range: found.range };
  },
});

export const wearToLimit = calculation({
  id: 'wear-to-limit',
  name: 'Wear to the limit',
  purpose: 'The span of distance in which a part that wears evenly will reach its limit.',
  formula: 'least squares line; span where the 90 % prediction band meets the limit',
  inputs: {
    distances: list('d', 'distance at each reading', kilometre, { low: 0 }),
    readings: list('x', 'reading at each distance', millimetre),
    limit: quantity('x_L', 'limit', millimetre),
    uncertainty: quantity('U', 'expanded uncertainty of a reading', millimetre, { optional: true, low: 0 }),
    first: words('', 'first reading', { optional: true, among: ['new', 'as found'] }),
  },
  outputs: projectionOutputs,
  range:
    'Like readings only (same item, position, condition), restarted when the part was renewed; three readings, or two of which the first is the size when new. Not for tyres by age or brake fluid.',
  source:
    'Ordinary least squares with inverse prediction (Fieller); points of Student’s t from memory. Straight-line wear is common practice.',
  tables: ['values-wear-fits'],
  cautions: ['span-no-promise'],
  example: {
    given: { distances: '0 km; 12000 km', readings: '50.000 mm; 50.042 mm', limit: '50.100 mm', first: 'new' },
    gives: { left: '16 571 km', reached: '28 571 km' },
  },
  work: (given) => {
    const [distances, readings] = [given.list('distances', kilometre), given.list('readings', millimetre)];
    if (distances.length !== readings.length) {
      given.doubt('calculation-value-wrong', 'there must be one reading for each distance');
      return {};
    }
    const points = distances.map((at, index) => ({ at, value: readings[index] ?? 0 }));
    const limit = given.number('limit', millimetre);
    const direction = limit >= (readings[0] ?? 0) ? 1 : -1;
    const found = projectWear(
      points,
      limit,
      direction,
      given.maybe('uncertainty', millimetre) ?? 0,
      given.words('first') === 'new',
    );
    return projectionResults(found, Math.max(...distances));
  },
});
