// What falls due within a horizon: a time, a distance, or whichever of both comes first.
import { addMonths } from '../../quantity/day-arithmetic.ts';
import type { Day } from '../../quantity/day.ts';
import type { Interval } from '../../records/model.ts';
import type { DueLine, DueState } from '../book.ts';

const pressing: ReadonlySet<DueState> = new Set(['overdue', 'due', 'not known']);
const never: ReadonlySet<DueState> = new Set(['done once', 'at its limit']);

/**
 * The lines that press already, and those that come due within the horizon from today: by their date, by the distance that is
 * left, or by the early end of the day at which the rider's pace reaches it. In the order given.
 */
export function dueWithin(due: readonly DueLine[], today: Day, horizon: Interval): readonly DueLine[] {
  const last = horizon.months === undefined ? undefined : addMonths(today, horizon.months);
  return due.filter((line) => {
    if (pressing.has(line.state)) return true;
    if (never.has(line.state)) return false;
    const left = line.left?.distance?.quantity;
    if (horizon.distance !== undefined && left !== undefined && left <= horizon.distance.quantity) return true;
    const days = [line.dueDay, line.projected?.early].filter((one) => one !== undefined);
    return last !== undefined && days.some((one) => one <= last);
  });
}
