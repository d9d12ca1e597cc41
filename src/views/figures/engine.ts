// What follows from the engine's measures: displacement, clearance volume, expected cranking pressure, timing both ways, load.
import type { Book } from '../../book/book.ts';
import { figureOn } from './figure-on.ts';
import type { NamedFigure } from './figure-on.ts';

/** Displacement and timing: the figures of a machine's head. */
export function headFigures(book: Book): readonly NamedFigure[] {
  return [
    ...figureOn(book, {
      id: 'displacement',
      name: 'Displacement',
      calculation: 'displacement',
      output: 'displacement',
    }),
    ...figureOn(book, {
      id: 'timing-angle',
      name: 'Ignition timing as a crank angle',
      calculation: 'crank-angle',
      output: 'angle',
    }),
  ];
}

/** The rest of the engine. */
export function engineFigures(book: Book): readonly NamedFigure[] {
  return [
    ...eachCylinder(book),
    ...figureOn(book, {
      id: 'clearance-volume',
      name: 'Clearance volume at the maker’s compression ratio',
      calculation: 'clearance-volume',
      output: 'clearance',
    }),
    ...fullRatio(book),
    ...crankingBand(book),
    ...figureOn(book, {
      id: 'timing-worth',
      name: 'Timing: 0.01 mm of the piston here is worth',
      calculation: 'crank-angle',
      output: 'per hundredth',
    }),
    ...figureOn(book, {
      id: 'timing-position',
      name: 'Timing angle of the book as piston travel before the top',
      calculation: 'piston-position',
      output: 'position',
    }),
    ...figureOn(book, {
      id: 'timing-degree',
      name: 'Timing: one degree here is worth',
      calculation: 'piston-position',
      output: 'per degree',
    }),
    ...figureOn(book, {
      id: 'lamp-load',
      name: 'Lamps and coil lit together',
      calculation: 'lamp-load',
      output: 'load',
    }),
    ...figureOn(book, {
      id: 'generator-left',
      name: 'Left over from the generator',
      calculation: 'lamp-load',
      output: 'left',
    }),
  ];
}

/** A single has said it already. */
function eachCylinder(book: Book): readonly NamedFigure[] {
  if (book.records.machine.features.cylinders === 1) return [];
  return figureOn(book, {
    id: 'displacement-each',
    name: 'Displacement of one cylinder',
    calculation: 'displacement',
    output: 'per cylinder',
  });
}

/** The ratio over the full stroke, where the maker counts from port closing and the height of the port is known. */
function fullRatio(book: Book): readonly NamedFigure[] {
  if (book.records.machine.geometry.compressionRatio?.from !== 'port closing') return [];
  return figureOn(book, {
    id: 'ratio-full',
    name: 'Compression ratio over the full stroke',
    calculation: 'compression-ratio',
    output: 'ratio',
  });
}

/** What a sound engine shows on the gauge, at the altitude of the machine. The maker’s own standard goes before it. */
export function crankingBand(book: Book): readonly NamedFigure[] {
  const counted = book.records.machine.geometry.compressionRatio?.from;
  const name =
    counted === 'full stroke'
      ? 'Cranking pressure to be expected at most, from the full-stroke ratio'
      : 'Cranking pressure to be expected of a sound engine, here';
  const reading = book.limits.get('compression')?.unit;
  const band = figureOn(book, {
    id: 'cranking-band',
    name,
    calculation: 'cranking-pressure',
    output: 'pressure',
  });
  if (reading?.dimension !== 'gauge pressure') return band;
  // As the gauge of this machine reads: psi in whole numbers, bar with one decimal.
  return band.map((one) => ({
    ...one,
    figure: { ...one.figure, unit: reading, decimals: reading.factor < 50_000 ? 0 : 1 },
  }));
}
