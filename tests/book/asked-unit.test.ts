// The unit a check asks its figure in: that of the machine's tools, on the sheet and when it is typed in.
import { expect, test } from 'vitest';
import { askedUnit } from '../../src/book/asked-unit.ts';

test('inch tools on a machine of inches, and the unit of the content elsewhere', () => {
  expect(['mm', 'bar', 'ml', 'V'].map((unit) => askedUnit('imperial', unit))).toEqual(['in', 'psi', 'ml', 'V']);
  expect(['mm', 'bar', 'ml', 'V'].map((unit) => askedUnit('metric', unit))).toEqual(['mm', 'bar', 'ml', 'V']);
});
