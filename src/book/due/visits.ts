// Services put together: what falls due near each other is done on one day, nothing later than its grace allows.
import type { Day } from '../../quantity/day.ts';
import { addDays, daysBetween } from '../../quantity/day-arithmetic.ts';
import type { DueLine, Visit } from '../book.ts';
import { byText } from '../in-order.ts';
import { graceOf } from './services.ts';

interface Window {
  readonly line: DueLine;
  readonly from: Day;
  readonly until: Day;
}

const pressing: ReadonlySet<string> = new Set(['overdue', 'due']);

/** The day a line comes due: by date, or at the rider's pace, whichever comes first. */
function dayDue(line: DueLine): Day | undefined {
  const paced = line.projected?.likely;
  if (line.dueDay === undefined || paced === undefined) return line.dueDay ?? paced;
  return paced < line.dueDay ? paced : line.dueDay;
}

/** From the day due to the end of its grace: a share of the time from the last service to the day due. */
function windowOf(line: DueLine, today: Day): Window | undefined {
  const from = dayDue(line);
  if (from === undefined || pressing.has(line.state) || from <= today) return undefined;
  const since = line.lastDone?.day ?? today;
  return { line, from, until: addDays(from, Math.floor(graceOf(line.service) * daysBetween(since, from))) };
}

/**
 * Days on which services are done together. What presses is done today. Of the rest, the one whose grace ends first sets
 * the day: everything due by then is done with it, on the latest of their days due, so that nothing is done early and
 * nothing later than its grace. Fewest days possible (windows taken by their ends). n log n in the lines.
 */
export function serviceVisits(due: readonly DueLine[], today: Day): readonly Visit[] {
  const now = due.filter((line) => pressing.has(line.state));
  const windows = due
    .map((line) => windowOf(line, today))
    .filter((one) => one !== undefined)
    .toSorted((a, b) => byText(a.until, b.until) || byText(a.from, b.from));
  const visits: Visit[] = now.length === 0 ? [] : [{ day: today, lines: now }];
  const taken = new Set<Window>();
  const byStart = windows.toSorted((a, b) => byText(a.from, b.from));
  let next = 0;
  for (const first of windows) {
    if (taken.has(first)) continue;
    const together: Window[] = [];
    for (let one = byStart[next]; one !== undefined && one.from <= first.until; one = byStart[next]) {
      next += 1;
      if (!taken.has(one)) together.push(one);
      taken.add(one);
    }
    visits.push({ day: together.at(-1)?.from ?? first.from, lines: together.map((one) => one.line) });
  }
  return visits;
}
