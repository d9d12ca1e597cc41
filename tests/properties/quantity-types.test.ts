// A wrong dimension does not compile: tsc checks this file, and an expected error that does not come is an error itself.
import { expect, expectTypeOf, test } from 'vitest';
import type { Figure } from '../../src/figure/figure.ts';
import { printIn } from '../../src/figure/print.ts';
import { inUnit, of } from '../../src/quantity/quantity.ts';
import type { Quantity } from '../../src/quantity/quantity.ts';
import { bar, barAbsolute, celsius, celsiusStep, metre, newtonMetre } from '../../src/quantity/units.ts';

const torque = of(24.5, newtonMetre);
const figure: Figure<'torque'> = {
  quantity: torque,
  unit: newtonMetre,
  decimals: 1,
  origin: { kind: 'published', table: 'none', row: 'none' },
};

test('a quantity comes out only in a unit of its own dimension', () => {
  // @ts-expect-error metres where newton-metres are due
  expect(inUnit(torque, metre)).toBe(24.5);
  // @ts-expect-error a gauge pressure is not an absolute one
  expect(inUnit(of(1, bar), barAbsolute)).toBe(1);
  // @ts-expect-error a temperature difference is not a temperature
  expect(inUnit(of(0, celsius), celsiusStep)).toBe(273.15);
  // @ts-expect-error a torque is not printed in metres
  expect(printIn(figure, metre, 1)).toContain('24.5');
});

test('a plain number is not a quantity', () => {
  expectTypeOf(24.5).not.toExtend<Quantity<'torque'>>();
  expectTypeOf(torque).toExtend<number>();
  expectTypeOf(torque).not.toExtend<Quantity<'length'>>();
  expectTypeOf(torque).toExtend<Quantity>();
  // @ts-expect-error a number without a unit is no length
  const length: Quantity<'length'> = 3;
  expect(length).toBe(3);
});
