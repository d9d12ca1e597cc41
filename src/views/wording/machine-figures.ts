// What follows from the machine's geometry: displacement, overall gearing, and the ignition timing as a crank angle.
import type { Book } from '../../book/book.ts';
import type { Values } from '../../calc/calculation.ts';
import { calculationById } from '../../calc/list.ts';
import type { Figure } from '../../figure/figure.ts';
import { written } from '../../figure/print.ts';
import type { Place } from '../../problem/problem.ts';
import { of } from '../../quantity/quantity.ts';
import { one, toOne } from '../../quantity/units.ts';
import type { ToothPair } from '../../records/model.ts';
import { count } from './count.ts';

export interface MachineFigure {
  readonly id: string;
  /** Our words, to be said in the dialect of the print. */
  readonly name: string;
  readonly figure: Figure;
}

/** A figure of a calculation, under a name; nothing where the geometry is not known. */
function worked(
  id: string,
  name: string,
  calculation: string,
  output: string,
  values: Values,
): readonly MachineFigure[] {
  const figure = calculationById(calculation)?.run(values).figures[output];
  return figure === undefined ? [] : [{ id, name, figure }];
}

/** All of them, in the order of a data page. */
export function machineFigures(book: Book): readonly MachineFigure[] {
  return [...displacement(book), ...timing(book), ...gearing(book)];
}

function placeOf(book: Book, ...path: readonly (string | number)[]): Place {
  return { file: book.records.machine.file, path: ['geometry', ...path] };
}

function displacement(book: Book): readonly MachineFigure[] {
  const { geometry, features, file } = book.records.machine;
  if (geometry.bore === undefined || geometry.stroke === undefined) return [];
  const at: Place = { file, path: ['features', 'cylinders'] };
  const cylinders: Figure = {
    quantity: of(features.cylinders, one),
    unit: one,
    decimals: 0,
    origin: { kind: 'written', at },
  };
  return worked('displacement', 'Displacement', 'displacement', 'displacement', {
    bore: written(geometry.bore, placeOf(book, 'bore')),
    stroke: written(geometry.stroke, placeOf(book, 'stroke')),
    cylinders,
  });
}

/** A timing given in millimetres of the piston, as the degrees of the crank that a disc shows. */
function timing(book: Book): readonly MachineFigure[] {
  const { stroke, rod } = book.records.machine.geometry;
  const setting = book.settings.get('ignition-timing');
  if (stroke === undefined || rod === undefined || setting?.value.kind !== 'read') return [];
  if (setting.value.written.unit.dimension !== 'length') return [];
  return worked('timing-angle', 'Ignition timing as a crank angle', 'crank-angle', 'angle', {
    stroke: written(stroke, placeOf(book, 'stroke')),
    rod: written(rod, placeOf(book, 'rod')),
    position: written(setting.value.written, setting.at, setting.source.title),
  });
}

function ratio(pair: ToothPair, at: Place): Figure<'ratio'> {
  return { quantity: of(pair.driven / pair.driving, toOne), unit: toOne, decimals: 3, origin: { kind: 'written', at } };
}

function gearing(book: Book): readonly MachineFigure[] {
  const { gears, primary, final } = book.records.machine.geometry;
  if (final === undefined) return [];
  const shared: Values = {
    final: ratio(final, placeOf(book, 'final')),
    ...(primary === undefined ? {} : { primary: ratio(primary, placeOf(book, 'primary')) }),
  };
  return gears.flatMap((pair, index) => {
    const gear = count(index + 1);
    const values: Values = { ...shared, gear: ratio(pair, placeOf(book, 'gears', index)) };
    return worked(`gear-${gear}`, `Overall ratio, gear ${gear}`, 'overall-ratio', 'ratio', values);
  });
}
