// The date code of a tyre: four digits since 2000, three before, where the decade stays open.
import { addDays, dayFromNumber, dayNumber } from '../quantity/day-arithmetic.ts';
import type { Day } from '../quantity/day.ts';
import { civilToNumber } from '../quantity/calendar.ts';
import { one, year } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { result, saying, words } from './input.ts';

export interface TyreDate {
  readonly week: number;
  /** One year for a four-digit code; each possible year for a three-digit one, the latest last. */
  readonly years: readonly number[];
}

/**
 * Reads `2600` (week 26 of 2000) or `324` (week 32 of 1974, 1984 or 1994); undefined for a code that no week has. Letters before
 * the digits (`DOT … 2600`) are passed over.
 */
export function readTyreDate(code: string): TyreDate | undefined {
  const digits = /(?:^|[^\d])(\d{3,4})\s*[◁◄<]?$/.exec(code.trim())?.[1];
  if (digits === undefined) return undefined;
  const week = Number(digits.slice(0, 2));
  if (week < 1 || week > 53) return undefined;
  const last = Number(digits.slice(2));
  if (digits.length === 4) return { week, years: [2000 + last] };
  return { week, years: [1970 + last, 1980 + last, 1990 + last] };
}

/** The Monday of an ISO week: 4 January always lies in week 1. */
export function weekBegins(inYear: number, week: number): Day {
  const fourth = civilToNumber(inYear, 1, 4);
  const monday = fourth - ((((fourth + 3) % 7) + 7) % 7);
  return addDays(dayFromNumber(monday), (week - 1) * 7);
}

export const tyreDate = calculation({
  id: 'tyre-date',
  name: 'Date code of a tyre',
  purpose: 'When a tyre was made, and how old it is; rubber ages whether it rolls or not.',
  formula: 'WWYY since 2000; WWY before, decade not coded',
  inputs: {
    code: words('', 'last digits of the code'),
    today: words('', 'day to reckon the age on', { optional: true }),
  },
  outputs: {
    week: result('', 'week', one, 0),
    year: result('', 'year', one, 0),
    age: result('', 'age', year, 1),
    made: saying('made'),
  },
  range:
    'A three-digit code leaves the decade open: the 1970s, 1980s or 1990s; the age is then the least it can be. A code is no proof of anything but the week.',
  source: '49 CFR 574.5; the symbol of some 1990s makers is common practice.',
  tables: ['values-tyres'],
  cautions: ['old-tyre'],
  example: {
    given: { code: '2600', today: '2010-06-26' },
    gives: { week: '26', year: '2000', age: '10.0 years', made: 'week 26 of 2000' },
  },
  work: (given) => {
    const read = readTyreDate(given.words('code'));
    const latest = read?.years.at(-1);
    if (read === undefined || latest === undefined) {
      given.doubt(
        'calculation-value-wrong',
        '“' + given.words('code') + '” is not a date code: two digits for the week, then the year',
      );
      return {};
    }
    const made = 'week ' + read.week + ' of ' + read.years.join(' or ');
    const today = /^\d{4}-\d{2}-\d{2}$/.test(given.words('today')) ? given.words('today') : undefined;
    const days =
      today === undefined
        ? undefined
        : civilToNumber(Number(today.slice(0, 4)), Number(today.slice(5, 7)), Number(today.slice(8, 10))) -
          dayNumber(weekBegins(latest, read.week));
    if (days !== undefined && days < -6) given.doubt('calculation-unlikely', 'this tyre would be made in the future');
    const open = read.years.length > 1;
    if (open) given.remark('The decade is not coded; the age is the least it can be.');
    return {
      week: read.week,
      year: open ? undefined : latest,
      age: days === undefined ? undefined : days / 365.2425,
      made,
    };
  },
});
