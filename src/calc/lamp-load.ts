// Lamps and coil against the generator.
import { ampere, ohm, volt, watt } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { list, quantity, result } from './input.ts';

export const lampLoad = calculation({
  id: 'lamp-load',
  name: 'Load against the generator',
  purpose: 'Adds up lamps and coil against what the generator gives, and finds the current of each.',
  formula: 'P = Σ P_i;  I = P/U;  left = P_gen − P',
  inputs: {
    lamps: list('P_i', 'lamps and coil lit together', watt, { above: 0 }),
    supply: quantity('U', 'supply', volt, { above: 0 }),
    generator: quantity('P_gen', 'generator', watt, { optional: true, above: 0 }),
  },
  outputs: {
    load: result('P', 'load', watt, 0),
    current: result('I', 'current', ampere, 1),
    left: result('', 'left over', watt, 0),
    'largest current': result('', 'largest single current', ampere, 2),
  },
  range: 'Watts as marked at the marked volts; a generator gives its watts only from a middling engine speed.',
  source: 'Definition of power.',
  tables: [],
  cautions: ['battery-short'],
  example: {
    given: { lamps: '25 W; 5 W; 3 W; 18 W', supply: '6 V', generator: '60 W' },
    gives: { load: '51 W', current: '8.5 A', left: '9 W', 'largest current': '4.17 A' },
  },
  work: (given) => {
    const lamps = given.list('lamps', watt);
    const supply = given.number('supply', volt);
    const load = lamps.reduce((sum, lamp) => sum + lamp, 0);
    const generator = given.maybe('generator', watt);
    const left = generator === undefined ? undefined : generator - load;
    if (left !== undefined && left < 0)
      given.doubt('calculation-unlikely', 'the load is more than the generator gives: the battery runs down');
    return { load, current: load / supply, left, 'largest current': Math.max(...lamps) / supply };
  },
});

export const lampResistance = calculation({
  id: 'lamp-resistance',
  name: 'Resistance of a lamp',
  purpose: 'What an ohmmeter shows on a sound lamp: far less than when it is lit.',
  formula: 'R_hot = U²/P;  R_cold ≈ R_hot/15 to R_hot/10',
  inputs: {
    volts: quantity('U', 'volts marked', volt, { above: 0 }),
    watts: quantity('P', 'watts marked', watt, { above: 0 }),
  },
  outputs: {
    hot: result('R_hot', 'lit', ohm, 2),
    cold: result('R_cold', 'cold, by the meter', ohm, 2),
    current: result('I', 'current when lit', ampere, 2),
  },
  range: 'Filament lamps. The leads of a meter add a few tenths of an ohm: touch them together first.',
  source: 'Definition of power; the ratio for tungsten is common practice (memory).',
  tables: [],
  cautions: ['battery-short'],
  example: {
    given: { volts: '6 V', watts: '25 W' },
    gives: { hot: '1.44 Ω', cold: '0.10 to 0.14 Ω', current: '4.17 A' },
  },
  work: (given) => {
    const [volts, watts] = [given.number('volts', volt), given.number('watts', watt)];
    const hot = volts ** 2 / watts;
    return { hot, cold: { value: hot / 12, low: hot / 15, high: hot / 10 }, current: watts / volts };
  },
});
