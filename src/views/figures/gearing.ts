// Gearing: the overall ratio of each gear, the rolling circumference, and the speed for each 1000 revolutions.
import type { Book } from '../../book/book.ts';
import { count } from '../wording/count.ts';
import { figureOn } from './figure-on.ts';
import type { NamedFigure } from './figure-on.ts';

export interface GearFigures {
  readonly gear: string;
  readonly ratio: readonly NamedFigure[];
  readonly kilometres: readonly NamedFigure[];
  readonly miles: readonly NamedFigure[];
}

/** One entry a gear; empty where the primary, the final drive or the gears are not known. */
export function gears(book: Book): readonly GearFigures[] {
  const { geometry } = book.records.machine;
  if (geometry.primary === undefined || geometry.final === undefined) return [];
  return geometry.gears.map((_, index) => {
    const gear = count(index + 1);
    const which = { 'in-gear': gear };
    const speed = (output: string, unit: string): readonly NamedFigure[] =>
      figureOn(book, {
        id: `speed-${unit}-${gear}`,
        name: `Speed for 1000 rpm, gear ${gear}`,
        calculation: 'road-speed',
        output,
        which,
      });
    return {
      gear,
      ratio: figureOn(book, {
        id: `gear-${gear}`,
        name: `Overall ratio, gear ${gear}`,
        calculation: 'overall-ratio',
        output: 'ratio',
        which,
      }),
      kilometres: speed('km/h per 1000', 'kmh'),
      miles: speed('mph per 1000', 'mph'),
    };
  });
}

/** Rolling circumference of the rear tyre, as a band from its marking. */
export function circumference(book: Book): readonly NamedFigure[] {
  return figureOn(book, {
    id: 'circumference',
    name: 'Rolling circumference of the rear tyre, from its marking',
    calculation: 'rolling-circumference',
    output: 'circumference',
  });
}

/** All of them. */
export function gearingFigures(book: Book): readonly NamedFigure[] {
  return [
    ...circumference(book),
    ...gears(book).flatMap(({ ratio, kilometres, miles }) => [...ratio, ...kilometres, ...miles]),
  ];
}
