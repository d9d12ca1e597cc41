// Every figure of a binder that was worked out, under the id that the sheets lead to. A view that shows a new one names it here.
import type { Book } from '../../book/book.ts';
import type { Figure } from '../../figure/figure.ts';
import { boreFigures } from '../figures/bores.ts';
import { engineFigures, headFigures } from '../figures/engine.ts';
import { gearingFigures } from '../figures/gearing.ts';
import { seriesFigures } from '../figures/series.ts';
import { tyreFigures } from '../figures/tyres.ts';
import { canTable, oilForFuel } from './oil-for-fuel.ts';

export interface WorkedFigure {
  /** Anchor on the page of workings. */
  readonly id: string;
  /** What the figure is, in our words. */
  readonly name: string;
  readonly figure: Figure;
}

function named(id: string, name: string, figure: Figure | undefined): readonly WorkedFigure[] {
  return figure === undefined || figure.origin.kind !== 'worked out' ? [] : [{ id, name, figure }];
}

const made = new WeakMap<Book, readonly WorkedFigure[]>();

/** All of them, in the order of the binder: the machine, readings, the first start, torques, services. Gathered once for a book. */
export function workedFigures(book: Book): readonly WorkedFigure[] {
  const known = made.get(book);
  if (known !== undefined) return known;
  const all = gather(book);
  made.set(book, all);
  return all;
}

function gather(book: Book): readonly WorkedFigure[] {
  const torques = book.torque.flatMap((row) =>
    named(`torque-${row.fastener.id}`, `Torque: ${row.fastener.name}`, row.value?.low),
  );
  const due = book.due.flatMap((line) =>
    named(`due-${line.service.id}`, `Due: ${line.service.item}`, line.dueOnClock ?? line.dueAt),
  );
  const oil = [...oilForFuel(book), ...canTable(book)].flatMap((mix) =>
    named(`oil-${mix.id}`, 'Oil in the fuel', mix.oil),
  );
  return [
    ...headFigures(book),
    ...named('distance-now', 'Distance of the machine', book.odometer.now.machine),
    ...engineFigures(book),
    ...gearingFigures(book),
    ...tyreFigures(book),
    ...boreFigures(book),
    ...book.series.flatMap((series) => seriesFigures(book, series)),
    ...oil,
    ...torques,
    ...due,
  ];
}
