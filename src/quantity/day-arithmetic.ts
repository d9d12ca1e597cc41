// Calendar dates: read, counted, compared. Months are counted from the anchor date and end on the month's last day at most.
import { civilToNumber, isLeap, monthLength, monthNames, numberToCivil } from './calendar.ts';
import type { Day, DaySpan } from './day.ts';
import type { Read } from './quantity.ts';
import { refuse, tooLong } from './read-number.ts';

const isoDay = /^(\d{4})-(\d{2})-(\d{2})$/;
const isoMonth = /^(\d{4})-(\d{2})$/;
const isoYear = /^\d{4}$/;
const slashed = /^(\d{1,2})[/.](\d{1,2})[/.](\d{2}|\d{4})$/;
const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const how = 'write year-month-day, for example 2024-05-04';

function pad(value: number, digits: number): string {
  return String(value).padStart(digits, '0');
}

function dayOf(year: number, month: number, day: number): Day {
  return (pad(year, 4) + '-' + pad(month, 2) + '-' + pad(day, 2)) as Day;
}

function parts(day: Day): { readonly year: number; readonly month: number; readonly day: number } {
  return { year: Number(day.slice(0, 4)), month: Number(day.slice(5, 7)), day: Number(day.slice(8, 10)) };
}

/** Why a date of the right form does not exist; undefined when it does. */
function impossible(text: string, month: number, day: number, year: number): string | undefined {
  if (month < 1 || month > 12) return `“${text}” has no month ${String(month)}`;
  const last = monthLength(year, month);
  const name = monthNames[month - 1] ?? '';
  if (day === 29 && month === 2)
    return isLeap(year) ? undefined : `${String(year)} is not a leap year: February has 28 days`;
  if (day < 1 || day > last) return `“${text}” does not exist: ${name} has ${String(last)} days`;
  return undefined;
}

/** Another form of a date that can only be this one: what to write, or why there is no such day. */
function otherForm(text: string, year: number, month: number, day: number): Read<never> {
  const why = impossible(text, month, day, year);
  if (why !== undefined) return refuse('date-unreadable', why);
  return refuse('date-unreadable', `“${text}” is not written as a date here`, `write ${dayOf(year, month, day)}`);
}

function unreadable(text: string): Read<never> {
  const [, ahead, middle, last] = yearFirst.exec(text) ?? [];
  if (ahead !== undefined) return otherForm(text, Number(ahead), Number(middle), Number(last));
  const parted = slashed.exec(text);
  if (parted === null) return refuse('date-unreadable', `“${text}” is not a date`, how);
  const [, a = '', b = '', y = ''] = parted;
  const year = Number(y.length === 4 ? y : '20' + y);
  if (Number(a) > 12) return otherForm(text, year, Number(b), Number(a));
  if (Number(b) > 12) return otherForm(text, year, Number(a), Number(b));
  const [first, second] = [dayOf(year, Number(b), Number(a)), dayOf(year, Number(a), Number(b))];
  return refuse('date-unreadable', `“${text}” may be ${first} or ${second}`, 'write one of the two');
}

/** Reads `2024-05-04`. Impossible dates are refused with the reason; other forms with what to write. */
export function readDay(text: string): Read<Day> {
  const trimmed = text.trim();
  const found = isoDay.exec(trimmed);
  if (found === null) return unreadable(trimmed);
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const why = impossible(trimmed, month, day, year);
  if (why !== undefined) return refuse('date-unreadable', why);
  return { ok: true, value: dayOf(year, month, day) };
}

function readMonth(text: string, year: number, month: number): Read<DaySpan> {
  if (month < 1 || month > 12) return refuse('date-unreadable', `“${text}” has no month ${String(month)}`, how);
  return {
    ok: true,
    value: { from: dayOf(year, month, 1), to: dayOf(year, month, monthLength(year, month)), whole: 'month' },
  };
}

/** Reads a day, `2024-05-04 to 2024-05-05`, a month `2024-05`, or a year `1969`. A span that runs backwards is refused. */
export function readDaySpan(text: string): Read<DaySpan> {
  const trimmed = text.trim();
  const long = tooLong(trimmed);
  if (long !== undefined) return long;
  if (isoYear.test(trimmed)) {
    const year = Number(trimmed);
    return { ok: true, value: { from: dayOf(year, 1, 1), to: dayOf(year, 12, 31), whole: 'year' } };
  }
  const month = isoMonth.exec(trimmed);
  if (month !== null) return readMonth(trimmed, Number(month[1]), Number(month[2]));
  const ends = trimmed.split(/\s+(?:to|–|-)\s+|–/);
  if (ends.length > 2)
    return refuse('date-unreadable', `“${trimmed}” has more than two dates`, 'write the first and the last day');
  const from = readDay(ends[0] ?? '');
  if (!from.ok || ends.length === 1) return from.ok ? { ok: true, value: { from: from.value, to: from.value } } : from;
  const to = readDay(ends[1] ?? '');
  if (!to.ok) return to;
  if (to.value < from.value)
    return refuse('date-unreadable', `“${trimmed}” ends before it begins`, 'write the earlier date first');
  return { ok: true, value: { from: from.value, to: to.value } };
}

/** Days since 1 January 1970. */
export function dayNumber(day: Day): number {
  const { year, month, day: date } = parts(day);
  return civilToNumber(year, month, date);
}

/** The day with this number; the inverse of dayNumber. */
export function dayFromNumber(number: number): Day {
  const { year, month, day } = numberToCivil(Math.trunc(number));
  return dayOf(year, month, day);
}

export function addDays(day: Day, count: number): Day {
  return dayFromNumber(dayNumber(day) + count);
}

/**
 * Counts whole months from an anchor; where the month is too short, its last day. Count n months from the anchor rather
 * than one month n times, or the 31st is lost on the way.
 * @example addMonths('2023-01-31', 1) // '2023-02-28'
 */
export function addMonths(day: Day, count: number): Day {
  const from = parts(day);
  const months = from.year * 12 + from.month - 1 + Math.trunc(count);
  const year = Math.floor(months / 12);
  const month = months - year * 12 + 1;
  return dayOf(year, month, Math.min(from.day, monthLength(year, month)));
}

/** Days from the first to the second; negative when the second is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return dayNumber(to) - dayNumber(from);
}

/** Whole months from the first to the second, the last one complete. */
export function monthsBetween(from: Day, to: Day): number {
  if (to < from) return -monthsBetween(to, from);
  const [a, b] = [parts(from), parts(to)];
  const months = (b.year - a.year) * 12 + b.month - a.month;
  return addMonths(from, months) > to ? months - 1 : months;
}

/** Negative when `a` is earlier, 0 when equal, positive when later: for sorting. */
export function compareDays(a: Day, b: Day): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
