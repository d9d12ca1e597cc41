// Oil in fuel: how much for any amount and ratio, topping up a part-full tank to a new ratio, and what a pump has used.
import { kilometre, litre, millilitre, one, percent, toOne } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

/** Parts of fuel to one of oil, whichever way round the ratio was written (25:1 or 1:25). */
export function fuelToOil(ratio: number): number {
  return ratio < 1 ? 1 / ratio : ratio;
}

/** Oil in ml for each amount of fuel in litres, one row for each ratio: the table for the can. */
export function canTable(
  ratios: readonly number[],
  litres: readonly number[],
): readonly { readonly ratio: number; readonly oil: readonly number[] }[] {
  return ratios.map((ratio) => ({ ratio, oil: litres.map((fuel) => (fuel / fuelToOil(ratio)) * 1000) }));
}

export const oilInFuel = calculation({
  id: 'oil-in-fuel',
  name: 'Oil in fuel',
  purpose: 'The oil for an amount of fuel at a ratio, for the can and for the temporary bottle.',
  formula: 'V_oil = V_fuel/r',
  inputs: {
    fuel: quantity('V_fuel', 'fuel', litre, { above: 0 }),
    ratio: quantity('r', 'fuel to oil, by volume', toOne, { above: 0, usual: [0.005, 200] }),
  },
  outputs: {
    oil: result('V_oil', 'oil', millilitre, 1),
    total: result('V', 'mixture', litre, 2, 'fuel'),
    share: result('', 'oil over fuel', percent, 2),
  },
  range: 'By volume; the ratio is fuel to oil, and the oil is added to the fuel.',
  source: 'Definition of the ratio; common practice of the trade.',
  tables: ['values-engine'],
  cautions: ['petrol'],
  example: { given: { fuel: '5 l', ratio: '25:1' }, gives: { oil: '200.0 ml', share: '4.00 %' } },
  work: (given) => {
    const fuel = given.number('fuel', litre);
    const ratio = fuelToOil(given.number('ratio', toOne));
    return { oil: (fuel / ratio) * 1000, total: fuel + fuel / ratio, share: 100 / ratio };
  },
});

export const tankTopUp = calculation({
  id: 'tank-top-up',
  name: 'Topping up to a new ratio',
  purpose: 'The oil to add with fresh fuel so that a part-full tank comes to the ratio wanted.',
  formula: 'V_oil = V_want − V_have;  V_have = V_tank/(r₁ + 1);  V_want = (V_tank − V_have + V_add)/r₂',
  inputs: {
    'in tank': quantity('V_tank', 'mixture in the tank', litre, { low: 0 }),
    'ratio in tank': quantity('r₁', 'ratio in the tank', toOne, { optional: true, above: 0 }),
    added: quantity('V_add', 'fresh fuel added', litre, { low: 0 }),
    ratio: quantity('r₂', 'ratio wanted', toOne, { above: 0 }),
  },
  outputs: {
    oil: result('V_oil', 'oil to add', millilitre, 0),
    'ratio without oil': result('', 'ratio if no oil is added', toOne, 1),
  },
  range: 'Without a ratio in the tank its fuel is taken as plain.',
  source: 'Balance of volumes.',
  tables: [],
  cautions: ['petrol'],
  example: {
    given: { 'in tank': '4.1 l', 'ratio in tank': '40:1', added: '6 l', ratio: '25:1' },
    gives: { oil: '300 ml', 'ratio without oil': '100.0:1' },
  },
  work: (given) => {
    const tank = given.number('in tank', litre);
    const before = given.maybe('ratio in tank', toOne);
    const oilThere = before === undefined ? 0 : tank / (fuelToOil(before) + 1);
    const fuel = tank - oilThere + given.number('added', litre);
    const oil = fuel / fuelToOil(given.number('ratio', toOne)) - oilThere;
    if (oil < 0)
      given.doubt('calculation-unlikely', 'the tank holds more oil already than the new ratio wants; add fuel only');
    return { oil: Math.max(0, oil) * 1000, 'ratio without oil': oilThere > 0 ? fuel / oilThere : undefined };
  },
});

export const pumpUse = calculation({
  id: 'oil-pump-use',
  name: 'What the oil pump has used',
  purpose: 'The ratio an oil pump has really given, from oil and fuel over a distance, to see that it pumps.',
  formula: 'r = V_fuel/V_oil;  per 1000 km = V_oil/d · 1000',
  inputs: {
    oil: quantity('V_oil', 'oil used', millilitre, { above: 0 }),
    fuel: quantity('V_fuel', 'fuel used', litre, { above: 0 }),
    distance: quantity('d', 'distance', kilometre, { optional: true, above: 0 }),
    least: quantity('', 'leanest ratio in the book', toOne, { optional: true, above: 1 }),
  },
  outputs: {
    ratio: result('r', 'fuel to oil', toOne, 0),
    'per 1000 km': result('', 'oil for 1000 km', millilitre, 0),
    'fuel for 100 km': result('', 'fuel for 100 km', litre, 2),
    times: result('', 'times the leanest ratio', one, 2),
  },
  range: 'Over at least a tank of fuel; a pump gives less oil at small throttle by design.',
  source: 'Definition; common practice.',
  tables: [],
  cautions: ['petrol', 'pump-unproved'],
  example: {
    given: { oil: '300 ml', fuel: '9.0 l', distance: '210 km' },
    gives: { ratio: '30:1', 'per 1000 km': '1429 ml' },
  },
  work: (given) => {
    const [oil, fuel] = [given.number('oil', millilitre), given.number('fuel', litre)];
    const ratio = (fuel * 1000) / oil;
    const distance = given.maybe('distance', kilometre);
    const least = given.maybe('least', toOne);
    if (least !== undefined && ratio > 1.25 * least)
      given.doubt(
        'calculation-unlikely',
        'the pump gives less oil than the book’s leanest ratio; look at cable, stop and air in the line',
      );
    return {
      ratio,
      'per 1000 km': distance === undefined ? undefined : (oil / distance) * 1000,
      'fuel for 100 km': distance === undefined ? undefined : (fuel / distance) * 100,
      times: least === undefined ? undefined : ratio / least,
    };
  },
});
