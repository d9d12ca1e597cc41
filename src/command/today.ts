// The day to compute for: as written with --today, or the day on this computer's calendar.

/** True for a date of the calendar written as `2026-11-14`. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const date = new Date(text + 'T00:00:00Z');
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}

/** The day that it is here, whatever it is in Greenwich. */
export function dayOf(now: Date): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return [String(now.getFullYear()).padStart(4, '0'), two(now.getMonth() + 1), two(now.getDate())].join('-');
}
