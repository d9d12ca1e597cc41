// Beside what a year has cost stands how far it went, from New Year to New Year between the readings.
import { expect, test } from 'vitest';
import { distanceByYear } from '../../src/book/costs/distance-by-year.ts';
import { printFigure } from '../../src/figure/print.ts';
import { evening, machineFile, type Evening } from '../evenings/evening.ts';

const years = (made: Evening): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...distanceByYear(made.book)].map(([year, far]) => [year, printFigure(far).replaceAll(/\s/gu, ' ')]),
  );
const at = (reads: string, more = ''): string => `odometer: ${reads}${more}`;

test('a year that was read at both ends, with what lies between two readings shared evenly over the days', () => {
  const made = evening('2026-05-20', {
    '2024-07-01-a': at('1000 km', '\nmoney: [{paid: 10.00 GBP, for: oil}]'),
    '2024-12-22-b': at('1400 km'),
    '2025-01-11-c': at('1440 km'),
    '2025-12-31-d': at('2000 km'),
    '2026-03-01-e': at('2060 km', '\nmoney: [{paid: 4.00 GBP, for: a bulb}]'),
  });
  expect(years(made)).toEqual({ '2024': '420 km', '2025': '581 km', '2026': '59 km' });
  const page = made.page('costs.html');
  expect(page).toContain('Ridden');
  expect(page).toMatch(/2024 \| 420 km \| 10\.00 GBP/u);
});

test('nothing is said of a year with no reading to count from, nor with one alone', () => {
  const money = 'money: [{paid: 10.00 GBP, for: oil}]';
  expect(years(evening('2026-05-20', { '2024-07-01-a': money }))).toEqual({});
  const later = evening('2026-05-20', {
    '2024-07-01-a': money,
    '2025-07-01-b': `${at('1000 km')}\n${money}`,
    '2025-09-01-c': at('1100 km'),
  });
  expect(years(later)).toEqual({ '2025': '100 km' });
  expect(later.page('costs.html')).toMatch(/2024 \| not known \| 10\.00 GBP/u);
});

test('over a changed clock it is the distance of the machine', () => {
  const made = evening(
    '2026-05-20',
    { '2025-02-01-a': at('8000 km'), '2025-06-01-b': at('23500 km') },
    {
      machine: machineFile({
        clock:
          '[{id: first, unit: km, digits: 5, from: {date: 1974-05-01, reads: 0 km}, to: {date: 2025-03-01, reads: 8100 km}, state: dead}, {id: second, unit: km, digits: 5, from: {date: 2025-03-01, reads: 23400 km}}]',
      }),
    },
  );
  expect(years(made)).toEqual({ '2025': '200 km' });
});
