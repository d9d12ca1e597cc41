// Dates as they are read aloud in a workshop: the month as a word, so that no reader takes May for the fourth month's day.
import { monthNames } from '../../quantity/calendar.ts';
import type { Day, DaySpan } from '../../quantity/day.ts';

function parts(day: Day): { readonly year: string; readonly month: string; readonly date: string } {
  const month = monthNames[Number(day.slice(5, 7)) - 1] ?? day.slice(5, 7);
  return { year: day.slice(0, 4), month, date: day.slice(8).replace(/^0/, '') };
}

/** Days said before: each page, list and table says those of its records. */
const said = new Map<Day, string>();
const mostSaid = 5000;

/** `4 May 2024`, the same in both dialects; the spaces do not break. */
export function dayText(day: Day): string {
  const before = said.get(day);
  if (before !== undefined) return before;
  const { year, month, date } = parts(day);
  const text = [date, month, year].join('\u00a0');
  if (said.size >= mostSaid) said.clear();
  said.set(day, text);
  return text;
}

/** `4 to 5 May 2024`, `28 April to 2 May 2024`, `May 2024`, `1969`: as much as the record knows. */
export function spanText(span: DaySpan): string {
  if (span.from === span.to && span.whole === undefined) return dayText(span.from);
  const from = parts(span.from);
  if (span.whole === 'year') return from.year;
  if (span.whole === 'month') return `${from.month}\u00a0${from.year}`;
  if (span.from === span.to) return dayText(span.from);
  const to = parts(span.to);
  if (from.year !== to.year) return `${dayText(span.from)} to ${dayText(span.to)}`;
  if (from.month !== to.month) return `${from.date}\u00a0${from.month} to ${dayText(span.to)}`;
  return `${from.date} to ${dayText(span.to)}`;
}

/** The year of a day, as text: `2024`. */
export function yearOf(day: Day): string {
  return day.slice(0, 4);
}

/** A date as a machine's papers give it, `1969-05` as `May 1969`; other words stand as they are. */
export function looseDateText(text: string): string {
  const month = /^(\d{4})-(\d{2})$/.exec(text);
  if (month === null) return withDates(text);
  return `${monthNames[Number(month[2]) - 1] ?? month[2] ?? ''}\u00a0${month[1] ?? ''}`;
}

/** A sentence of the book with its dates as they are read aloud; never used on the owner's own words. */
export function withDates(sentence: string): string {
  return sentence.replaceAll(/\b(\d{4})-(\d{2})(?:-(\d{2}))?\b/g, (_, year: string, month: string, date?: string) => {
    const name = `${monthNames[Number(month) - 1] ?? month}\u00a0${year}`;
    return date === undefined ? name : `${date.replace(/^0/, '')}\u00a0${name}`;
  });
}

/** `read last: Autumn service, 2026-09-19` with its day as it is read aloud; the title before it stays as its owner wrote it. */
export function withLastDay(place: string): string {
  return place.replaceAll(/(?<=, )\d{4}-\d{2}-\d{2}(?=[,;)]|$)/gu, withDates);
}
