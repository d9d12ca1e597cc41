// Calendar dates against an independent library, and what is said of dates that do not exist.
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { weekBegins } from '../../src/calc/tyre-date.ts';
import {
  addDays,
  addMonths,
  compareDays,
  dayFromNumber,
  dayNumber,
  daysBetween,
  monthsBetween,
  readDay,
  readDaySpan,
} from '../../src/quantity/day-arithmetic.ts';
import type { Day } from '../../src/quantity/day.ts';

const anyDay = fc.integer({ min: -140_000, max: 90_000 }).map(dayFromNumber);
const plainDate = (day: Day): Temporal.PlainDate => Temporal.PlainDate.from(day);

describe('days agree with Temporal', () => {
  test('numbers, there and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -140_000, max: 90_000 }), (number) => {
        expect(dayFromNumber(number)).toBe(Temporal.PlainDate.from('1970-01-01').add({ days: number }).toString());
        expect(dayNumber(dayFromNumber(number))).toBe(number);
      }),
    );
  });

  test('months counted from the anchor', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -600, max: 600 }), (day, months) => {
        expect(addMonths(day, months)).toBe(plainDate(day).add({ months }).toString());
      }),
    );
  });

  test('days added and days between', () => {
    fc.assert(
      fc.property(anyDay, anyDay, (a, b) => {
        expect(daysBetween(a, b)).toBe(plainDate(a).until(plainDate(b)).days);
        expect(addDays(a, daysBetween(a, b))).toBe(b);
        expect(Math.sign(compareDays(a, b))).toBe(Temporal.PlainDate.compare(plainDate(a), plainDate(b)));
      }),
    );
  });

  test('whole months between', () => {
    fc.assert(
      fc.property(anyDay, fc.nat({ max: 20_000 }), (from, days) => {
        const to = addDays(from, days);
        const months = monthsBetween(from, to);
        expect(addMonths(from, months) <= to).toBe(true);
        expect(addMonths(from, months + 1) > to).toBe(true);
      }),
    );
  });

  test('the Monday of an ISO week', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1970, max: 2099 }), fc.integer({ min: 1, max: 52 }), (year, week) => {
        const monday = plainDate(weekBegins(year, week));
        expect([monday.yearOfWeek, monday.weekOfYear, monday.dayOfWeek]).toEqual([year, week, 1]);
      }),
    );
  });
});

describe('reading dates', () => {
  test('every date that exists is read, no other', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1900, max: 2100 }),
        fc.integer({ min: 0, max: 13 }),
        fc.integer({ min: 0, max: 32 }),
        (year, month, day) => {
          const text = [year, String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-');
          const exists =
            month >= 1 &&
            month <= 12 &&
            day >= 1 &&
            day <= Temporal.PlainYearMonth.from({ year, month: Math.min(12, Math.max(1, month)) }).daysInMonth;
          expect(readDay(text).ok, text).toBe(exists);
        },
      ),
    );
  });

  test.each([
    ['2023-02-29', /not a leap year/],
    ['2024-04-31', /April has 30 days/],
    ['2024-13-01', /no month 13/],
    ['04/05/2024', /may be 2024-05-04 or 2024-04-05/],
    ['14/05/2024', /write 2024-05-14/],
    ['yesterday', /year-month-day/],
    ['2024-05-04 to 2024-05-01', /ends before it begins/],
  ])('%s is refused with the reason', (text, message) => {
    const read = readDaySpan(text);
    expect(read.ok ? 'read' : read.why.message + ' ' + (read.why.hint ?? '')).toMatch(message);
  });

  test.each([
    ['2024-05', { from: '2024-05-01', to: '2024-05-31', whole: 'month' }],
    ['2024-02', { from: '2024-02-01', to: '2024-02-29', whole: 'month' }],
    ['1969', { from: '1969-01-01', to: '1969-12-31', whole: 'year' }],
    ['2024-05-04 to 2024-05-05', { from: '2024-05-04', to: '2024-05-05' }],
    [' 2024-05-04 ', { from: '2024-05-04', to: '2024-05-04' }],
  ])('%s is read', (text, span) => expect(readDaySpan(text)).toEqual({ ok: true, value: span }));
});
