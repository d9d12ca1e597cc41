// Resistance: of a wire by its gauge, and of a winding hot and cold.
import { celsius, millimetre, ohm, one, squareMillimetre } from '../quantity/units.ts';
import { copperAt } from './volt-drop.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

export const wireGauge = calculation({
  id: 'wire-gauge',
  name: 'American wire gauge',
  purpose: 'Diameter, area and resistance of a wire named by AWG number.',
  formula: 'd = 0.127 mm · 92^((36 − n)/39)',
  inputs: {
    gauge: quantity('n', 'AWG number', one, { low: 0, high: 40, whole: true }),
    temperature: quantity('t', 'temperature', celsius, { optional: true, low: -40, high: 150 }),
  },
  outputs: {
    diameter: result('d', 'diameter', millimetre, 4),
    area: result('A', 'area', squareMillimetre, 3),
    'per 1000 ft': result('', 'resistance of 1000 ft', ohm, 4),
  },
  range: 'Solid copper; a stranded wire of the gauge has the area, not the diameter.',
  source: 'ASTM B258 gauge law; resistivity of annealed copper 0.017241 Ω·mm²/m (IEC 60028).',
  tables: ['values-electrical'],
  cautions: ['battery-short', 'fuse-first'],
  example: { given: { gauge: '18' }, gives: { diameter: '1.0237 mm', area: '0.823 mm²', 'per 1000 ft': '6.3849 Ω' } },
  work: (given) => {
    const diameter = 0.127 * 92 ** ((36 - given.number('gauge', one)) / 39);
    const area = (Math.PI / 4) * diameter ** 2;
    return {
      diameter,
      area,
      'per 1000 ft': copperAt((0.017241 / area) * 304.8, given.maybe('temperature', celsius) ?? 20),
    };
  },
});

export const hotResistance = calculation({
  id: 'hot-resistance',
  name: 'Resistance hot and cold',
  purpose: 'Brings a coil’s resistance to another temperature, so that it can be compared with the book.',
  formula: 'R₂ = R₁ (234.5 + t₂)/(234.5 + t₁)',
  inputs: {
    resistance: quantity('R₁', 'resistance measured', ohm, { above: 0 }),
    measured: quantity('t₁', 'temperature when measured', celsius, { low: -40, high: 200 }),
    wanted: quantity('t₂', 'temperature wanted (20 °C unless given)', celsius, { optional: true, low: -40, high: 200 }),
  },
  outputs: { resistance: result('R₂', 'resistance', ohm, 3, 'resistance'), factor: result('', 'factor', one, 4) },
  range: 'Copper windings. Not lamps: a tungsten filament is ten to fifteen times its cold resistance when lit.',
  source: 'IEC 60228 temperature factors.',
  tables: ['values-electrical'],
  cautions: ['meter-on-dead-wire'],
  example: { given: { resistance: '4.2 Ω', measured: '30 °C' }, gives: { resistance: '4.041 Ω', factor: '0.9622' } },
  work: (given) => {
    const factor = (234.5 + (given.maybe('wanted', celsius) ?? 20)) / (234.5 + given.number('measured', celsius));
    return { resistance: given.number('resistance', ohm) * factor, factor };
  },
});
