// When a shop is open next, from a day on; the clock on the wall is not known, so today counts as a whole.
import type { Day } from '../../quantity/day.ts';
import { addDays, dayNumber } from '../../quantity/day-arithmetic.ts';
import type { OpenHours, Supplier, Weekday } from '../../records/model.ts';
import { weekdays } from '../../records/workshop-model.ts';

/** The day of the week; 1 January 1970 was a Thursday. */
export function weekdayOf(day: Day): Weekday {
  return weekdays[(((dayNumber(day) + 3) % 7) + 7) % 7] ?? 'Monday';
}

export interface OpenOn {
  readonly day: Day;
  readonly weekday: Weekday;
  /** From when to when, as it is written. */
  readonly hours: string;
  /** Days from the day that was asked for; 0 is that day itself. */
  readonly inDays: number;
}

/** The hours of one day: what is written later for the same day counts, as a closed day does within a span. */
function hoursOn(hours: readonly OpenHours[], weekday: Weekday): OpenHours | undefined {
  return hours.findLast(({ days }) => days.includes(weekday));
}

/** The next day on which the shop is open; undefined where no hours are known, or none are open. */
export function nextOpen({ hours }: Supplier, today: Day): OpenOn | undefined {
  for (let inDays = 0; inDays < 8; inDays += 1) {
    const day = addDays(today, inDays);
    const weekday = weekdayOf(day);
    const open = hoursOn(hours, weekday);
    if (open !== undefined && open.spans.length > 0) return { day, weekday, hours: open.text, inDays };
  }
  return undefined;
}
