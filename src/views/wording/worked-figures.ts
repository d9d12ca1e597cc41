// Every figure of a binder that was worked out, under the id that the sheets lead to. A view that shows a new one names it here.
import type { Book } from '../../book/book.ts';
import type { Figure } from '../../figure/figure.ts';
import { machineFigures } from './machine-figures.ts';
import { oilForFuel } from './oil-for-fuel.ts';

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

/** All of them, in the order of the binder: the machine, the first start, torques, services. */
export function workedFigures(book: Book): readonly WorkedFigure[] {
  const torques = book.torque.flatMap((row) =>
    named(`torque-${row.fastener.id}`, `Torque: ${row.fastener.name}`, row.value?.low),
  );
  const due = book.due.flatMap((line) =>
    named(`due-${line.service.id}`, `Due: ${line.service.item}`, line.dueOnClock ?? line.dueAt),
  );
  const oil = oilForFuel(book).flatMap((mix) => named(`oil-${mix.id}`, 'Oil in the fuel', mix.oil));
  const machine = machineFigures(book).flatMap(({ id, name, figure }) => named(id, name, figure));
  return [
    ...machine,
    ...named('distance-now', 'Distance of the machine', book.odometer.now.machine),
    ...oil,
    ...torques,
    ...due,
  ];
}
