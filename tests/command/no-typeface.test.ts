// A character that no typeface has is told by itself and by the code point that is printed for it.
import { expect, it } from 'vitest';
import { noTypeface } from '../../src/command/no-typeface.ts';
import { shape } from '../../src/pdf/faces.ts';

it('names the character and what is printed in its place', () => {
  expect(noTypeface('Torque table', shape('日x', 'regular').missing)).toBe(
    'Torque table: no typeface has “日” (U+65E5); the code point is printed in its place',
  );
});
it('names what cannot be shown by its code point', () => {
  expect(noTypeface('Tags', ['\ufffe', '\u{1f527}'])).toContain('“” (U+FFFE), “\u{1f527}” (U+1F527)');
});
