// data/due.ics: what is due, as a calendar that other programs read (iCalendar, RFC 5545). The same book gives the same bytes.
import type { Book, DueLine } from '../book/book.ts';
import type { Day } from '../quantity/day.ts';
import { addDays, dayNumber } from '../quantity/day-arithmetic.ts';
import { contentLines } from './calendar-lines.ts';

/** The day on which a line stands in the calendar: by its date, or by the rider's pace, whichever comes first. */
function dayOf({ dueDay, projected }: DueLine): Day | undefined {
  const paced = projected?.likely;
  if (dueDay === undefined || paced === undefined) return dueDay ?? paced;
  return paced < dueDay ? paced : dueDay;
}

/** `20260401`. */
function plainDay(day: Day): string {
  return day.replaceAll('-', '');
}

/** What tells this machine from others of its name in one calendar, without giving its number away. */
function machineMark(book: Book): string {
  const { name, numbers } = book.records.machine;
  const frame = numbers.find((number) => number.name === 'frame')?.stamped ?? '';
  let state = 0x811c9dc5;
  for (const letter of `${name}\n${frame}`) state = Math.imul(state ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return (state >>> 0).toString(36).padStart(7, '0');
}

/** The sentence of the due list: which bound comes first, what is left, and at which pace. */
function told({ why, service }: DueLine): string {
  return service.basis === 'general' ? `${why}\nGeneral schedule, not the maker’s` : why;
}

/** One entry of a whole day for every line of the due list that has a day; the stamp is the day it was worked out for, and the revision counts days, so that a calendar takes the newer. */
export function dueCalendar(book: Book): string {
  const stamp = `${plainDay(book.today)}T000000Z`;
  const revision = String(Math.max(0, dayNumber(book.today)));
  const mark = machineMark(book);
  const entries = book.due.flatMap((line): readonly (readonly [string, string])[] => {
    const day = dayOf(line);
    if (day === undefined || line.state === 'done once') return [];
    const { id, item, action } = line.service;
    return [
      ['BEGIN', 'VEVENT'],
      ['UID', `due-${id}-${mark}@splitpin`],
      ['DTSTAMP', stamp],
      ['LAST-MODIFIED', stamp],
      ['SEQUENCE', revision],
      ['DTSTART;VALUE=DATE', plainDay(day)],
      ['DTEND;VALUE=DATE', plainDay(addDays(day, 1))],
      ['SUMMARY', escaped(`${item}: ${action} (${book.records.machine.name})`)],
      ['DESCRIPTION', escaped(told(line))],
      ['TRANSP', 'TRANSPARENT'],
      ['END', 'VEVENT'],
    ];
  });
  return contentLines([
    ['BEGIN', 'VCALENDAR'],
    ['VERSION', '2.0'],
    ['PRODID', '-//Splitpin//Service due//EN'],
    ...entries,
    ['END', 'VCALENDAR'],
  ]);
}

/** RFC 5545, 3.3.11: what means something in a text is written with a backslash; other control characters are left out. */
function escaped(text: string): string {
  return text
    .replaceAll(/[\\;,]/gu, (mark) => `\\${mark}`)
    .replaceAll(/\r\n|\r|\n/gu, String.raw`\n`)
    .replaceAll(/(?!\t)\p{Cc}/gu, '');
}
