// Shop hours: `{Monday to Friday: 8:00 to 17:00, Saturday: 9:00 to 12:00}`; `closed` is a word that may stand.
import type { OpenHours, Weekday } from '../workshop-model.ts';
import { weekdays } from '../workshop-model.ts';
import { refuse, type Desk, type Spot } from './desk.ts';
import { mapOf, text } from './plain.ts';
import { andThen, type Shape } from './shape.ts';

/** A day by its name or its first letters, three of them at least. */
function dayNamed(word: string): Weekday | undefined {
  const plain = word.trim().toLowerCase();
  return plain.length < 3 ? undefined : weekdays.find((day) => day.toLowerCase().startsWith(plain));
}

/** `Saturday`, `Mon to Fri`, `Tuesday, Thursday`; a span may run over the end of the week. */
function daysOf(words: string): readonly Weekday[] | undefined {
  const days = words.split(',').flatMap((piece): readonly (Weekday | undefined)[] => {
    const [first = '', last] = piece.split(/\s+to\s+|\s*[–-]\s*/u);
    const from = dayNamed(first);
    if (last === undefined) return [from];
    const to = dayNamed(last);
    if (from === undefined || to === undefined) return [undefined];
    const [a, b] = [weekdays.indexOf(from), weekdays.indexOf(to)];
    return weekdays.map((_, step) => weekdays[(a + step) % 7]).slice(0, ((b - a + 7) % 7) + 1);
  });
  const known = days.filter((day) => day !== undefined);
  return known.length === days.length ? known : undefined;
}

/** Minutes since midnight of `9:00`, `9.30`, `9`, `noon`. */
function minuteOf(words: string): number | undefined {
  if (words === 'noon') return 720;
  const found = /^(\d{1,2})(?:[:.](\d{2}))?$/u.exec(words);
  if (found === null) return undefined;
  const [hour, minute] = [Number(found[1]), Number(found[2] ?? '0')];
  return hour < 24 && minute < 60 ? hour * 60 + minute : words === '24:00' ? 1440 : undefined;
}

/** `9:00 to 12:30, 13:30 to 18:00`; closed is no span at all. */
function spansOf(words: string): OpenHours['spans'] | undefined {
  if (words.trim() === 'closed') return [];
  const spans = words.split(',').map((piece) => {
    const [from, to] = piece
      .trim()
      .split(/\s+to\s+|\s*[–-]\s*/u)
      .map(minuteOf);
    return from === undefined || to === undefined || to <= from ? undefined : { from, to };
  });
  const known = spans.filter((span) => span !== undefined);
  return known.length === spans.length ? known : undefined;
}

function oneLine(key: string, words: string, spot: Spot, desk: Desk): OpenHours | undefined {
  const days = daysOf(key);
  if (days === undefined) {
    const how = 'Write a day or a span of days, as Saturday or Monday to Friday.';
    return refuse(desk, spot, 'hours-unreadable', `“${key}” is no day of the week.`, how, 'at key');
  }
  const spans = spansOf(words);
  if (spans !== undefined) return { days, spans, text: words };
  const how = 'Write from when to when, as 9:00 to 12:00, or closed.';
  return refuse(desk, spot, 'hours-unreadable', `“${words}” is not from when to when.`, how);
}

/** The hours of a shop, a line a day or span of days. */
export const openHours: Shape<readonly OpenHours[]> = andThen(mapOf(text, 'days of the week'), (found, _, desk) =>
  found.flatMap(({ key, value, spot }) => oneLine(key, value, spot, desk) ?? []),
);
