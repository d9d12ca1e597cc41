// Months counted from an anchor date, so that a due date does not creep.
import { addMonths, readDay } from '../quantity/day-arithmetic.ts';
import { one } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, saying, words } from './input.ts';

export const monthsFrom = calculation({
  id: 'months-from',
  name: 'Months from a date',
  purpose: 'The date so many months after a date, for anything due by the calendar.',
  formula: 'same day of the month, or its last day where the month is shorter; always counted from the anchor',
  inputs: {
    from: words('', 'anchor date'),
    months: quantity('n', 'months', one, { low: -1200, high: 1200, whole: true }),
  },
  outputs: { due: saying('due') },
  range: 'Calendar of today (Gregorian).',
  source: 'Common practice; agrees with the calendar arithmetic of Temporal.',
  tables: [],
  cautions: [],
  example: { given: { from: '2024-01-31', months: '1' }, gives: { due: '2024-02-29' } },
  work: (given) => {
    const from = readDay(given.words('from'));
    if (from.ok) return { due: addMonths(from.value, given.number('months', one)) };
    given.doubt('calculation-value-wrong', from.why.message);
    return {};
  },
});
