// Tyres: what the marking stands for, when each was made, and how old it is on the day of the binder.
import type { Book } from '../../book/book.ts';
import { calculationOn } from '../../book/taken/on-machine.ts';
import { figureOn } from './figure-on.ts';
import type { NamedFigure } from './figure-on.ts';

export interface TyreFigures {
  readonly wheel: 'front' | 'rear';
  readonly marking?: string;
  /** The code as it was read. */
  readonly code?: string;
  /** Week and year in words. */
  readonly made?: string;
  readonly age: readonly NamedFigure[];
  readonly diameter: readonly NamedFigure[];
  readonly tread: readonly NamedFigure[];
  readonly remarks: readonly string[];
}

function tyreOf(book: Book, wheel: 'front' | 'rear'): TyreFigures {
  const which = { wheel };
  const { frontTyre, rearTyre } = book.records.machine.geometry;
  const marking = wheel === 'front' ? frontTyre : rearTyre;
  const dated = calculationOn(book, 'tyre-date', {}, which);
  const code = dated?.taken.find((one) => one.input === 'code')?.value;
  const made = dated?.worked.words['made'];
  const one = (id: string, name: string, calculation: string, output: string): readonly NamedFigure[] =>
    figureOn(book, { id: `${id}-${wheel}`, name: `${name}, ${wheel}`, calculation, output, which });
  return {
    wheel,
    ...(marking === undefined ? {} : { marking }),
    ...(typeof code === 'string' ? { code } : {}),
    ...(made === undefined ? {} : { made }),
    age: one('tyre-age', 'Age of the tyre', 'tyre-date', 'age'),
    diameter: one('tyre-diameter', 'Nominal diameter of the tyre', 'tyre-marking', 'diameter'),
    tread: one('tread-left', 'Tread left above the road rules', 'tread-depth', 'left'),
    remarks: code === undefined ? [] : (dated?.worked.remarks ?? []).filter((text) => text.startsWith('The decade')),
  };
}

/** Both wheels, where anything is known of them. */
export function tyres(book: Book): readonly TyreFigures[] {
  return [tyreOf(book, 'front'), tyreOf(book, 'rear')].filter(
    (one) => one.marking !== undefined || one.code !== undefined,
  );
}

/** All figures of both. */
export function tyreFigures(book: Book): readonly NamedFigure[] {
  return tyres(book).flatMap((one) => [...one.age, ...one.diameter, ...one.tread]);
}
