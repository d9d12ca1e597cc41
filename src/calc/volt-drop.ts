// Volt drop of a wire, and the wire and fuse for a load.
import { ampere, celsius, metre, ohm, percent, squareMillimetre, volt } from '../quantity/units.ts';
import { cellNumber, table } from '../table/table.ts';
import { calculation } from './calculation.ts';
import { quantity, result, saying, words } from './input.ts';

/** Ohms of copper at °C from ohms at 20 °C. R = R₂₀ (234.5 + t)/254.5 (agrees with the factors of IEC 60228). */
export function copperAt(ohmsAt20: number, celsiusDegrees: number): number {
  return (ohmsAt20 * (234.5 + celsiusDegrees)) / 254.5;
}

/** Ohms for each metre at 20 °C: the class 5 row of the size, else from the resistivity of copper. */
function ohmsPerMetre(area: number): number {
  const row = table('cable-sizes').rows.find((one) => Number(one.cells['area']) === area);
  const perKilometre = row === undefined ? undefined : cellNumber('cable-sizes', row.id, 'resistance per km');
  return perKilometre === undefined ? 0.017241 / area : perKilometre / 1000;
}

export const voltDrop = calculation({
  id: 'volt-drop',
  name: 'Volt drop of a wire',
  purpose: 'The volts that a wire keeps from its lamp or coil.',
  formula: 'ΔU = L · R′ · I, there and back for a two-wire run',
  inputs: {
    current: quantity('I', 'current', ampere, { above: 0 }),
    length: quantity('L', 'length of copper, there and back', metre, { above: 0 }),
    area: quantity('A', 'cross-section', squareMillimetre, { optional: true, above: 0 }),
    'ohms per metre': quantity('R′', 'resistance of one metre', ohm, { optional: true, above: 0 }),
    temperature: quantity('t', 'temperature of the wire', celsius, { optional: true, low: -40, high: 150 }),
    supply: quantity('U', 'supply', volt, { optional: true, above: 0 }),
  },
  outputs: { drop: result('ΔU', 'volt drop', volt, 3), share: result('', 'of the supply', percent, 2) },
  range: 'Copper; where the frame is the return give the wire’s own length. Joints and switches add their own.',
  source: 'Ohm’s law; IEC 60228 class 5 resistances.',
  tables: ['cable-sizes', 'values-electrical'],
  cautions: ['battery-short', 'fuse-first'],
  example: {
    given: { current: '8.75 A', length: '5 m', 'ohms per metre': '0.0189 Ω', supply: '12 V' },
    gives: { drop: '0.827 V', share: '6.89 %' },
  },
  work: (given) => {
    const area = given.maybe('area', squareMillimetre);
    const each = given.maybe('ohms per metre', ohm) ?? (area === undefined ? undefined : ohmsPerMetre(area));
    if (each === undefined) {
      given.doubt('calculation-value-missing', 'neither a cross-section nor a resistance for a metre is given');
      return {};
    }
    const drop =
      given.number('current', ampere) *
      given.number('length', metre) *
      copperAt(each, given.maybe('temperature', celsius) ?? 20);
    const supply = given.maybe('supply', volt);
    return { drop, share: supply === undefined ? undefined : (drop / supply) * 100 };
  },
});

export const wireSize = calculation({
  id: 'wire-size',
  name: 'Wire size and fuse',
  purpose: 'The smallest standard wire by volt drop and by current, and the fuse that protects it.',
  formula: 'least A with L · R′ · I ≤ drop · U and rating ≥ I;  fuse between 1.25 I and the rating',
  inputs: {
    current: quantity('I', 'current', ampere, { above: 0 }),
    length: quantity('L', 'length of copper, there and back', metre, { above: 0 }),
    supply: quantity('U', 'supply', volt, { above: 0 }),
    drop: quantity('', 'drop allowed', percent, { optional: true, above: 0, high: 20 }),
    laid: words('', 'how it is laid', { optional: true, among: ['loom', 'free'] }),
  },
  outputs: {
    'by drop': result('A', 'by volt drop', squareMillimetre, 2),
    'by current': result('A', 'by current', squareMillimetre, 2),
    area: result('A', 'wire', squareMillimetre, 2),
    fuse: result('', 'fuse', ampere, 1),
    basis: saying('bases'),
  },
  range:
    'Up to 6 mm². Drop 4 % unless given (common practice). The loom rating is for PVC cable run together, the free rating for thin-wall cable in free air.',
  source:
    'IEC 60228 class 5; PVC motor-vehicle cable chart; thin-wall catalogue from memory; fuse rule common practice.',
  tables: ['cable-sizes', 'values-electrical'],
  cautions: ['battery-short', 'fuse-first'],
  example: {
    given: { current: '5 A', length: '4 m', supply: '6 V' },
    gives: { 'by drop': '2.00 mm²', 'by current': '0.65 mm²', area: '2.00 mm²', fuse: '7.5 A' },
  },
  work: (given) => {
    const [current, length, supply] = [
      given.number('current', ampere),
      given.number('length', metre),
      given.number('supply', volt),
    ];
    const allowed = ((given.maybe('drop', percent) ?? 4) / 100) * supply;
    const column = given.words('laid') === 'free' ? 'free rating' : 'loom rating';
    const sizes = table('cable-sizes').rows.map((row) => ({
      area: cellNumber('cable-sizes', row.id, 'area') ?? 0,
      ohms: (cellNumber('cable-sizes', row.id, 'resistance per km') ?? 0) / 1000,
      rating: cellNumber('cable-sizes', row.id, column),
    }));
    const byDrop = sizes.find((size) => size.ohms * length * current <= allowed);
    const byCurrent = sizes.find((size) => size.rating !== undefined && size.rating >= current);
    if (byDrop === undefined || byCurrent === undefined) {
      given.doubt(
        'calculation-out-of-range',
        'no wire of the table carries this; shorten it, part it in two, or use a relay',
      );
      return {};
    }
    const area = Math.max(byDrop.area, byCurrent.area);
    const rating = sizes.find((size) => size.area >= area && size.rating !== undefined)?.rating ?? current;
    const fuse = [2, 3, 5, 7.5, 10, 15, 20, 25, 30].find((size) => size >= 1.25 * current && size <= rating);
    return {
      'by drop': byDrop.area,
      'by current': byCurrent.area,
      area,
      fuse,
      basis:
        'volt drop: IEC 60228 class 5 at 20 °C; current: ' +
        (column === 'free rating' ? 'thin-wall, free air' : 'PVC in a loom'),
    };
  },
});
