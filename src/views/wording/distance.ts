// Distance in lines: as on the clock that day, and the machine's own where the two differ.
import { printFigure } from '../../figure/print.ts';
import type { DistanceAt } from '../../book/book.ts';
import type { Text } from '../../sheet/sheet.ts';
import type { ViewContext } from '../view.ts';
import { withDates } from './day.ts';
import type { Say } from './work.ts';

/** `8 214 mi on the clock, 8 214 mi of the machine`; the second only where it differs or is not known. */
export function distanceText(say: Say, at: DistanceAt | undefined): string | undefined {
  if (at === undefined) return undefined;
  const machine = at.machine === undefined ? undefined : printFigure(at.machine);
  if (at.clock === undefined) return machine === undefined ? undefined : `${machine} ${say('of the machine')}`;
  const clock = printFigure(at.clock);
  if (machine === undefined) return `${clock} ${say('on the clock; the distance of the machine is not known')}`;
  return clock === machine ? clock : `${clock} ${say('on the clock')}; ${machine} ${say('of the machine')}`;
}

/** `Odometer: not actual. …`, in the three words that are used of odometers, with the reason. */
export function odometerStatement({ book, say }: ViewContext): Text {
  const { word, why } = book.odometer.statement;
  return [{ kind: 'strong', text: `${say('Odometer')}: ${say(word)}.` }, ` ${withDates(why)}`];
}
