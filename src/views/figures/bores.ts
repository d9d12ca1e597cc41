// Bores and pistons of each cylinder from the newest readings: taper, out-of-round, wear, clearance, oversize, ring gap.
import type { Book } from '../../book/book.ts';
import { calculationOn } from '../../book/taken/on-machine.ts';
import { figureOn } from './figure-on.ts';
import type { NamedFigure } from './figure-on.ts';

export interface BoreFigures {
  readonly cylinder: string;
  readonly taper: readonly NamedFigure[];
  readonly round: readonly NamedFigure[];
  readonly wear: readonly NamedFigure[];
  readonly clearance: readonly NamedFigure[];
  readonly oversize: readonly NamedFigure[];
  readonly needed: readonly NamedFigure[];
  /** The rule by which taper and out-of-round were taken. */
  readonly rule?: string;
}

function cylinders(book: Book): readonly string[] {
  const names = book.records.machine.features.cylinderNames;
  return names.length === 0 ? [''] : names;
}

function boreOf(book: Book, cylinder: string): BoreFigures {
  const which = { at: cylinder };
  const key = cylinder === '' ? '' : `-${cylinder.replace(/\s+/g, '-')}`;
  const told = cylinder === '' ? '' : `, ${cylinder}`;
  const one = (id: string, name: string, calculation: string, output: string): readonly NamedFigure[] =>
    figureOn(book, {
      id: `${id}${key}`,
      name: `${name}${told}`,
      calculation,
      output,
      which,
    });
  const rule = calculationOn(book, 'bore-wear', {}, which)?.worked.words['rule'];
  return {
    cylinder,
    taper: one('bore-taper', 'Bore, taper', 'bore-wear', 'taper'),
    round: one('bore-round', 'Bore, out-of-round', 'bore-wear', 'out-of-round'),
    wear: one('bore-wear', 'Bore, wear over the standard in force', 'bore-wear', 'wear'),
    clearance: one('piston-clearance', 'Piston clearance, smallest bore less skirt', 'piston-clearance', 'clearance'),
    oversize: one('next-oversize', 'Next oversize that cleans up', 'next-oversize', 'oversize'),
    needed: one('oversize-needed', 'Least bore that cleans up', 'next-oversize', 'needed'),
    ...(rule === undefined ? {} : { rule }),
  };
}

/** One entry for each cylinder with a bore reading. */
export function bores(book: Book): readonly BoreFigures[] {
  return cylinders(book)
    .map((cylinder) => boreOf(book, cylinder))
    .filter((one) => one.taper.length + one.wear.length + one.oversize.length > 0);
}

/** The gap that is common for a new ring in this bore. */
export function commonRingGap(book: Book): readonly NamedFigure[] {
  return figureOn(book, {
    id: 'ring-gap-common',
    name: 'Ring gap, common for this bore',
    calculation: 'ring-gap',
    output: 'common',
  });
}

/** All of them. */
export function boreFigures(book: Book): readonly NamedFigure[] {
  return [
    ...bores(book).flatMap((one) => [
      ...one.taper,
      ...one.round,
      ...one.wear,
      ...one.clearance,
      ...one.oversize,
      ...one.needed,
    ]),
    ...commonRingGap(book),
  ];
}
