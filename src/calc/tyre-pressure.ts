// Tyre pressure, cold and warm.
import { bar, celsius, hectopascalAbsolute } from '../quantity/units.ts';
import { calculation } from './calculation.ts';
import { quantity, result } from './input.ts';

export const tyrePressure = calculation({
  id: 'tyre-pressure',
  name: 'Tyre pressure, cold and warm',
  purpose: 'What a pressure set at one temperature reads at another.',
  formula: 'p₂ = (p₁ + p₀) · T₂/T₁ − p₀',
  inputs: {
    pressure: quantity('p₁', 'pressure', bar, { above: 0, high: 10 }),
    temperature: quantity('t₁', 'temperature when set', celsius, { low: -40, high: 90 }),
    'other temperature': quantity('t₂', 'other temperature', celsius, { low: -40, high: 90 }),
    ambient: quantity('p₀', 'air pressure (1013 hPa unless given)', hectopascalAbsolute, { optional: true, above: 0 }),
  },
  outputs: { pressure: result('p₂', 'pressure then', bar, 2, 'pressure') },
  range: 'Volume of the tyre taken as constant. Pressures in books are cold pressures.',
  source: 'Ideal gas at constant volume.',
  tables: [],
  cautions: ['old-tyre', 'tyre-cold'],
  example: {
    given: { pressure: '2.0 bar', temperature: '10 °C', 'other temperature': '40 °C' },
    gives: { pressure: '2.32 bar' },
  },
  work: (given) => {
    const ambient = (given.maybe('ambient', hectopascalAbsolute) ?? 1013.25) / 1000;
    const ratio =
      (given.number('other temperature', celsius) + 273.15) / (given.number('temperature', celsius) + 273.15);
    return { pressure: (given.number('pressure', bar) + ambient) * ratio - ambient };
  },
});
