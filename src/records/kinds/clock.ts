// The odometer over the years: one period for each instrument that was on the machine.
import type { InstrumentPeriod } from '../model.ts';
import { dayOrMonth } from '../shapes/measured.ts';
import { entry, group, may, need, or } from '../shapes/fields.ts';
import { quantity, unit } from '../shapes/measured.ts';
import { choice, id, list, number } from '../shapes/plain.ts';
import { refuse } from '../shapes/desk.ts';
import { andThen, type Shape } from '../shapes/shape.ts';
import { unitOf } from '../../quantity/unit-spelling.ts';

const end = andThen(
  group({
    date: need(dayOrMonth, 'when', { example: '2026-03-14' }),
    reads: may(quantity('distance ridden', '8214 mi'), 'what it read then'),
  }),
  ({ date, ...rest }) => ({ ...date, ...rest }),
);

const distanceUnit = andThen(unit, (found, spot, desk) => {
  const distance = unitOf(found.symbol, 'distance ridden');
  return distance ?? refuse(desk, spot, 'unit-wrong', `A clock does not count ${found.symbol}.`, 'Write mi or km.');
});

const period: Shape<InstrumentPeriod> = entry({
  id: need(id, 'a permanent name for this instrument', { example: 'first-clock' }),
  unit: need(distanceUnit, 'what it counts', { example: 'mi' }),
  digits: or(number(3, 7, 'whole'), 5, 'whole digits it shows before it turns over', { example: '5' }),
  from: need(end, 'when it went on and what it read', { example: '{date: 1969-05, reads: 0 mi}' }),
  to: may(end, 'when it came off and what it read', { example: '{date: 2026-03-14, reads: 8214 mi}' }),
  state: or(choice('working', 'dead', 'reset', 'rolled over', 'wrong drive'), 'working', 'what became of it'),
});

export const clock: Shape<readonly InstrumentPeriod[]> = list(period);
