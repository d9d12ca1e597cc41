// The questions of an intake: what must be known before a machine has a binder. Each may be left for later.
import { heard, notHeard, type Heard } from './heard.ts';
import {
  brakesHeard,
  clockHeard,
  driveHeard,
  electricsHeard,
  engineHeard,
  oilHeard,
  printHeard,
  sparkHeard,
} from './trade-answers.ts';

export interface Question {
  /** Name of the option, and key in a file of answers. */
  readonly id: string;
  readonly asks: string;
  /** What an answer looks like. */
  readonly example: string;
  readonly hear: (answer: string) => Heard;
}

/** Any words; they are kept as they are written. */
function words(key: string): Question['hear'] {
  return (answer) =>
    answer.length > 200 ? notHeard('This is too long: write at most 200 characters.') : heard({ [key]: answer });
}

export const questions: readonly Question[] = [
  { id: 'make', asks: 'Make', example: 'Larkmoor', hear: words('make') },
  { id: 'model', asks: 'Model', example: 'Pipit 175', hear: words('model') },
  { id: 'year', asks: 'Year of making', example: '1969', hear: words('year') },
  { id: 'frame', asks: 'Frame number, as stamped', example: 'LP175-04417', hear: words('frame') },
  { id: 'engine-number', asks: 'Engine number, as stamped', example: 'LE175-04390', hear: words('engine number') },
  { id: 'clock', asks: 'What its clock reads now, with the unit, or none', example: '7512 mi', hear: clockHeard },
  {
    id: 'engine',
    asks: 'Engine: two or four strokes, how many cylinders',
    example: 'two, 2 cylinders',
    hear: engineHeard,
  },
  { id: 'oil', asks: 'Engine oil: premix, pump, wet sump or dry sump', example: 'premix', hear: oilHeard },
  {
    id: 'spark',
    asks: 'Spark: magneto in the flywheel or separate, or battery and coil; points or electronic',
    example: 'flywheel magneto, points',
    hear: sparkHeard,
  },
  {
    id: 'electrics',
    asks: 'Electrics: volts, battery, lamps; or none',
    example: '6 V, battery, lamps',
    hear: electricsHeard,
  },
  { id: 'brakes', asks: 'Brakes, front then rear: drum or disc', example: 'drum, drum', hear: brakesHeard },
  {
    id: 'drive',
    asks: 'Gearbox: in unit with the engine or separate; final drive: chain, shaft or belt; wheels: spoked, cast or pressed',
    example: 'unit, chain, spoked',
    hear: driveHeard,
  },
  {
    id: 'print-on',
    asks: 'Paper (a4, letter, a5, half-letter), the currency you pay in, and what your torque wrench reads: metric or imperial',
    example: 'a4, GBP, metric',
    hear: printHeard,
  },
];
