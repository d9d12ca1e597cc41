// State of charge of a lead-acid battery from rested volts or from gravity, and the charge it wants.
import {
  ampere,
  ampereHour,
  celsius,
  fahrenheit,
  hour,
  one,
  percent,
  specificGravity,
  volt,
} from '../quantity/units.ts';
import { cellNumber, table } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

type Point = readonly [at: number, charge: number];

/** Charge (%) for a value between the rows of the table, straight between them and held at its ends. */
function chargeAt(points: readonly Point[], value: number): number {
  const sorted = points.toSorted((a, b) => a[0] - b[0]);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined) return Number.NaN;
  if (value <= first[0]) return first[1];
  const upper = sorted.findIndex((point) => point[0] >= value);
  const [above, below] = [sorted[upper], sorted[upper - 1]];
  if (above === undefined || below === undefined) return last[1];
  return below[1] + ((value - below[0]) / (above[0] - below[0])) * (above[1] - below[1]);
}

function pointsOf(column: string): readonly Point[] {
  return table('charge-by-volts').rows.map((row): Point => [
    cellNumber('charge-by-volts', row.id, column) ?? Number.NaN,
    cellNumber('charge-by-volts', row.id, 'charge') ?? Number.NaN,
  ]);
}

/** Gravity at 80 °F from a reading at another temperature: 0.0004 for each °F (maker table). */
export function gravityAt80(reading: number, fahrenheitDegrees: number): number {
  return reading + 0.0004 * (fahrenheitDegrees - 80);
}

export const batteryVolts = calculation({
  id: 'battery-volts',
  name: 'State of charge from volts',
  purpose: 'How full a rested battery is, by its open-circuit volts, 6 V or 12 V.',
  formula: 'table of volts at rest; for 6 V twice the reading',
  inputs: {
    volts: quantity('U', 'volts after hours of rest', volt, { above: 0 }),
    cells: quantity('', 'cells', one, { optional: true, low: 1, high: 12, whole: true }),
  },
  outputs: { charge: result('', 'charge', percent, 0), 'per cell': result('', 'volts a cell', volt, 3) },
  range:
    'Rested for hours, no charger just before, about 27 °C. Published tables differ by 0.1 V, so the band is ten per cent of charge. Without a number of cells: three up to 8 V, else six.',
  source: 'Battery maker table; the gravity form 6 (SG + 0.845) agrees within 0.1 V.',
  tables: ['charge-by-volts', 'values-electrical'],
  cautions: ['battery-short'],
  example: { given: { volts: '6.12 V' }, gives: { charge: '40 to 60 %', 'per cell': '2.040 V' } },
  work: (given) => {
    const volts = given.number('volts', volt);
    const cells = given.maybe('cells', one) ?? (volts < 8 ? 3 : 6);
    const each = volts / cells;
    if (each > 2.3) given.doubt('calculation-unlikely', 'this is a charging voltage, not a rested one');
    if (each < 1.9) given.doubt('calculation-unlikely', 'a cell may be dead or the battery flat for long');
    const charge = chargeAt(pointsOf('volts of 12 V'), each * 6);
    return {
      charge: { value: charge, low: Math.max(0, charge - 10), high: Math.min(100, charge + 10) },
      'per cell': each,
    };
  },
});

export const restedVolts = calculation({
  id: 'rested-volts',
  name: 'Rested volts of a charge',
  purpose: 'The open-circuit volts that a state of charge shows, to write beside the blank.',
  formula: 'table of volts at rest; 6 V is half of 12 V',
  inputs: {
    charge: quantity('', 'charge', percent, { low: 0, high: 100 }),
    cells: quantity('', 'cells', one, { low: 1, high: 12, whole: true }),
  },
  outputs: {
    volts: result('U', 'volts at rest', volt, 3),
    gravity: result('', 'gravity at 27 °C', specificGravity, 3),
  },
  range: 'Lead-acid, rested, about 27 °C.',
  source: 'Battery maker table.',
  tables: ['charge-by-volts', 'values-electrical'],
  cautions: ['battery-short'],
  example: { given: { charge: '100 %', cells: '3' }, gives: { volts: '6.325 V', gravity: '1.265' } },
  work: (given) => {
    const swap = (points: readonly Point[]): readonly Point[] => points.map(([at, charge]) => [charge, at]);
    const charge = given.number('charge', percent);
    return {
      volts: (chargeAt(swap(pointsOf('volts of 12 V')), charge) * given.number('cells', one)) / 6,
      gravity: chargeAt(swap(pointsOf('gravity')), charge),
    };
  },
});

export const batteryGravity = calculation({
  id: 'battery-gravity',
  name: 'State of charge from gravity',
  purpose: 'How full a cell is by the hydrometer, brought to one temperature.',
  formula: 'SG₈₀ = SG + 0.0004 (t_F − 80)',
  inputs: {
    gravity: quantity('SG', 'gravity read', specificGravity, { low: 1, high: 1.35 }),
    temperature: quantity('t', 'temperature of the acid', celsius, { optional: true, low: -20, high: 60 }),
  },
  outputs: {
    corrected: result('SG₈₀', 'gravity at 27 °C (80 °F)', specificGravity, 3),
    correction: result('', 'correction', specificGravity, 4),
    charge: result('', 'charge', percent, 0),
  },
  range: 'Flooded cells; compare the cells with each other: 0.05 between them says more than the mean.',
  source: 'Battery maker table and its temperature rule.',
  tables: ['charge-by-volts', 'values-electrical'],
  cautions: ['battery-acid'],
  example: {
    given: { gravity: '1.240', temperature: '30 °F' },
    gives: { corrected: '1.220', correction: '−0.0200', charge: '71 %' },
  },
  work: (given) => {
    const read = given.number('gravity', specificGravity);
    const corrected = gravityAt80(read, given.maybe('temperature', fahrenheit) ?? 80);
    return { corrected, correction: corrected - read, charge: chargeAt(pointsOf('gravity'), corrected) };
  },
});

export const chargeTime = calculation({
  id: 'charge-time',
  name: 'Charging a battery',
  purpose: 'The current of a tenth and the hours that a charge takes.',
  formula: 't = 1.2 · C (1 − s)/I;  I = C/10 unless given',
  inputs: {
    capacity: quantity('C', 'capacity', ampereHour, { above: 0 }),
    charge: quantity('s', 'charge now', percent, { low: 0, high: 100 }),
    current: quantity('I', 'charging current', ampere, { optional: true, above: 0 }),
  },
  outputs: { current: result('I', 'charging current', ampere, 2), time: result('t', 'time', hour, 1) },
  range:
    'Lead-acid; a fifth more is put in than taken out. Charge where it is aired, away from flame, caps loose on flooded cells.',
  source: 'Common practice.',
  tables: [],
  cautions: ['battery-acid', 'battery-short'],
  example: { given: { capacity: '11 Ah', charge: '50 %' }, gives: { current: '1.10 A', time: '6.0 h' } },
  work: (given) => {
    const capacity = given.number('capacity', ampereHour);
    const current = given.maybe('current', ampere) ?? capacity / 10;
    if (current > capacity / 5)
      given.doubt('calculation-unlikely', 'more than a fifth of the capacity is a fast charge');
    return { current, time: (1.2 * capacity * (1 - given.number('charge', percent) / 100)) / current };
  },
});
