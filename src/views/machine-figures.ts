// What follows from the machine's measures: engine, timing both ways, compression, load, and a table of the gears.
import type { Block, Cell } from '../sheet/sheet.ts';
import { column, fact, heading, lines, row, stack } from './wording/blocks.ts';
import { inlineFigure, resultText } from './wording/figure.ts';
import { engineFigures, headFigures } from './figures/engine.ts';
import { circumference, gears, type GearFigures } from './figures/gearing.ts';
import type { NamedFigure } from './figures/figure-on.ts';
import type { ToothPair } from '../records/model.ts';
import { defineView } from './view.ts';
import type { ViewContext } from './view.ts';

export const machineFigures = defineView({
  id: 'machine-figures',
  purpose:
    'Displacement, clearance volume, timing in millimetres and degrees, gearing and speed, each with its working.',
  needs: 'machine',
  options: [],
  blocks: (context) => stack(engine(context), gearing(context)),
});

function engine({ book, say }: ViewContext): readonly Block[] {
  const all = [...headFigures(book), ...engineFigures(book)];
  // What belongs to the timing stands together, after what the engine is.
  const isTiming = ({ id }: NamedFigure): boolean => id.startsWith('timing');
  const figures = [...all.filter((one) => !isTiming(one)), ...all.filter(isTiming)];
  if (figures.length === 0) return [];
  return [
    heading(2, say('What follows from the measures'), 'figures'),
    {
      type: 'facts',
      facts: figures.flatMap(({ id, name, figure }) => fact(say(name), [inlineFigure(figure, id)])),
    },
  ];
}

function cell(figures: readonly NamedFigure[]): Cell {
  return { text: figures.map(({ id, figure }) => ({ kind: 'figure', text: resultText(figure), to: `working:${id}` })) };
}

function gearing({ book, say }: ViewContext): readonly Block[] {
  const all = gears(book);
  const rolled = circumference(book);
  const told = rolled.map(({ id, name, figure }) => [`${say(name)}: `, inlineFigure(figure, id)]);
  const { gears: teeth, primary, final } = book.records.machine.geometry;
  if (teeth.length === 0) return [];
  if (all.length === 0)
    return [heading(2, say('Gearing'), 'gearing'), lines([...told, say(notWorkedOut(primary, final))])];
  const kilometres = { head: say('km/h for 1000 rpm'), of: (one: GearFigures) => one.kilometres };
  const miles = { head: say('mph for 1000 rpm'), of: (one: GearFigures) => one.miles };
  // Its own unit first: that of its clock.
  const speeds = book.odometer.now.clock?.unit.symbol === 'mi' ? [miles, kilometres] : [kilometres, miles];
  return [
    heading(2, say('Gearing'), 'gearing'),
    {
      type: 'table',
      columns: [
        column(say('Gear'), 2),
        column(say('Overall'), 4, 'right'),
        ...speeds.map(({ head }) => column(head, 4, 'right')),
      ],
      rows: all.map((one) => row(one.gear, cell(one.ratio), ...speeds.map(({ of }) => cell(of(one))))),
      empty: '',
      use: 'read',
    },
    lines([
      ...told,
      say('The marking gives a nominal size: a wheel rolled out on the floor under its load is nearer the truth.'),
    ]),
  ];
}

/** A drive that nobody has counted is not taken for direct. */
function notWorkedOut(primary: ToothPair | undefined, final: ToothPair | undefined): string {
  const missing = [primary === undefined ? 'primary' : '', final === undefined ? 'final drive' : ''];
  const named = missing.filter((drive) => drive !== '').join(' and ');
  return `No gear is worked out: the teeth of the ${named} are not recorded.`;
}
