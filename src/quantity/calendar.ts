// The Gregorian calendar as plain integers: day numbers and month lengths. Day 0 is 1 January 1970.

/** January first. */
export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Days in a month (1 to 12) of a year. */
export function monthLength(year: number, month: number): number {
  if (month === 2) return isLeap(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

export function isLeap(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Day number of a date, counted in 400-year cycles from 1 March, so that the leap day is the last of its year. */
export function civilToNumber(year: number, month: number, day: number): number {
  const shifted = month <= 2 ? year - 1 : year;
  const cycle = Math.floor(shifted / 400);
  const yearOfCycle = shifted - cycle * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const dayOfCycle = yearOfCycle * 365 + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100) + dayOfYear;
  return cycle * 146_097 + dayOfCycle - 719_468;
}

/** The date of a day number: the inverse of civilToNumber. */
export function numberToCivil(number: number): { readonly year: number; readonly month: number; readonly day: number } {
  const moved = number + 719_468;
  const cycle = Math.floor(moved / 146_097);
  const dayOfCycle = moved - cycle * 146_097;
  const leaps = Math.floor(dayOfCycle / 1460) - Math.floor(dayOfCycle / 36_524) + Math.floor(dayOfCycle / 146_096);
  const yearOfCycle = Math.floor((dayOfCycle - leaps) / 365);
  const dayOfYear = dayOfCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const day = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = yearOfCycle + cycle * 400 + (month <= 2 ? 1 : 0);
  return { year, month, day };
}
