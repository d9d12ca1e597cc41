// One figure that a calculation gives on a machine, under the id that leads to its working; nothing where the machine does not say enough.
import type { Book } from '../../book/book.ts';
import { calculationOn } from '../../book/taken/on-machine.ts';
import type { Which } from '../../book/taken/taken.ts';
import type { Values } from '../../calc/calculation.ts';
import type { Figure } from '../../figure/figure.ts';
import { inch, millimetre } from '../../quantity/units.ts';

export interface NamedFigure {
  readonly id: string;
  /** Our words, to be said in the dialect of the print. */
  readonly name: string;
  readonly figure: Figure;
}

export interface Wanted {
  readonly id: string;
  readonly name: string;
  readonly calculation: string;
  readonly output: string;
  readonly given?: Values;
  readonly which?: Which;
}

/** Lengths in inches where the machine is measured in them: one decimal more, since 0.01 mm is 0.0004 in. */
function asMeasured(book: Book, figure: Figure): Figure {
  if (book.records.machine.units === 'metric' || figure.unit.symbol !== millimetre.symbol) return figure;
  return { ...figure, unit: inch, decimals: figure.decimals + 1 };
}

/** The figure, in the units of the machine, or nothing. */
export function figureOn(book: Book, wanted: Wanted): readonly NamedFigure[] {
  const worked = calculationOn(book, wanted.calculation, wanted.given, wanted.which)?.worked;
  const figure = worked?.figures[wanted.output];
  return figure === undefined ? [] : [{ id: wanted.id, name: wanted.name, figure: asMeasured(book, figure) }];
}
