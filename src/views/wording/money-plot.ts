// Money over time: the running sum of what was counted, with the limit the owner will spend.
import type { Costs } from '../../book/book.ts';
import { dayNumber } from '../../quantity/day-arithmetic.ts';
import { formatMoney } from '../../quantity/money-arithmetic.ts';
import type { PlotBlock } from '../../sheet/sheet.ts';

/** Pence and cents to pounds and dollars, for the height of a dot only; what is printed is never taken from it. */
const minorUnits = 100;

/** A plot where money moved on two days or more; undefined otherwise. */
export function moneyPlot(say: (words: string) => string, costs: Costs): PlotBlock | undefined {
  const byDay = new Map<number, number>();
  for (const { day: paid, inOwn } of costs.entries) {
    const day = dayNumber(paid);
    byDay.set(day, (byDay.get(day) ?? 0) + (inOwn?.minor ?? 0));
  }
  const days = [...byDay].toSorted(([one], [other]) => one - other);
  if (days.length < 2) return undefined;
  let sum = 0;
  const sums = days.map(([x, minor]) => {
    sum += minor;
    return { x, y: sum / minorUnits, label: formatMoney({ minor: sum, currency: costs.total.currency }) };
  });
  // Before the first day nothing was spent, and the scale begins there.
  const points = [...sums.slice(0, 1).map(({ x }) => ({ x, y: 0 })), ...sums];
  const { limit } = costs;
  return {
    type: 'plot',
    title: say('Money over time'),
    description: say('The running sum of what was spent, by date; the entries below have every amount.'),
    x: { label: say('date'), kind: 'day' },
    y: { label: costs.total.currency },
    series: [{ name: say('spent'), mark: 'dot', line: 'solid', points }],
    limits:
      limit === undefined ? [] : [{ name: say('the limit I will spend'), y: limit.minor / minorUnits, line: 'dashed' }],
  };
}
