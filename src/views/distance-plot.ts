// Distance over time: what the clock has counted of the machine's own distance, from instrument to instrument.
import { dayNumber } from '../quantity/day-arithmetic.ts';
import { inUnit } from '../quantity/quantity.ts';
import { printFigure } from '../figure/print.ts';
import type { Block, PlotBlock } from '../sheet/sheet.ts';
import { heading } from './wording/blocks.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const distancePlot = defineView({
  id: 'distance-plot',
  purpose: 'The machine’s distance by date, where it was read on two days or more.',
  needs: 'machine',
  options: [],
  blocks: (context): readonly Block[] => {
    const plot = plotOf(context);
    return plot === undefined ? [] : [heading(2, context.say('Distance over time'), 'distance-over-time'), plot];
  },
});

function plotOf({ book, say }: ViewContext): PlotBlock | undefined {
  // From the first record on: years of which only the first day is known would press all that is read into a corner.
  const points = book.odometer.readings.flatMap(({ day, machine, job }) =>
    machine === undefined || job === undefined
      ? []
      : [{ x: dayNumber(day), y: inUnit(machine.quantity, machine.unit), label: printFigure(machine) }],
  );
  const unit = book.odometer.readings.find(({ machine }) => machine !== undefined)?.machine?.unit.symbol;
  if (unit === undefined || new Set(points.map(({ x }) => x)).size < 2) return undefined;
  return {
    type: 'plot',
    title: say('Distance over time'),
    description: say('The distance of the machine by date, counted over all its clocks; every record has its reading.'),
    x: { label: say('date'), kind: 'day' },
    y: { label: unit },
    series: [{ name: say('distance of the machine'), mark: 'dot', line: 'solid', points }],
    limits: [],
  };
}
