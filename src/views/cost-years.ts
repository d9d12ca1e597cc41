// What each year has cost, and how far the machine went in it where the readings say so.
import { distanceByYear } from '../book/costs/distance-by-year.ts';
import { printFigure } from '../figure/print.ts';
import { formatMoney } from '../quantity/money-arithmetic.ts';
import type { Block } from '../sheet/sheet.ts';
import { column, row } from './wording/blocks.ts';
import type { ViewContext } from './view.ts';

/** Years with money in them; beside a year that no reading bounds stands nothing. */
export function costYears({ book, say }: ViewContext): Block {
  const ridden = distanceByYear(book);
  const { byYear } = book.costs;
  const known = byYear.some(({ year }) => ridden.has(year));
  const distance = (year: string): string => {
    const figure = ridden.get(year);
    return figure === undefined ? say('not known') : printFigure(figure);
  };
  return {
    type: 'table',
    columns: [
      column(say('Year'), 6),
      ...(known ? [column(say('Ridden'), 3, 'right')] : []),
      column(say('Sum'), 3, 'right'),
    ],
    rows: byYear.map(({ year, total }) => row(year, ...(known ? [distance(year)] : []), formatMoney(total))),
    empty: say('No money is recorded.'),
    use: 'read',
  };
}
