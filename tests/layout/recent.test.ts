// What is kept of lately made things: never more than twice the number asked for, and what is used often is not lost.
import { expect, it } from 'vitest';
import { recent } from '../../src/layout/recent.ts';

it('keeps what is used often, and loses what is not', () => {
  const kept = recent<number>(10);
  kept.set('often', 1);
  for (let number = 0; number < 1000; number += 1) {
    kept.set('word ' + String(number), number);
    expect(kept.get('often')).toBe(1);
  }
  const left = Array.from({ length: 1000 }, (_, number) => kept.get('word ' + String(number))).filter(
    (found) => found !== undefined,
  );
  expect(left.length).toBeGreaterThanOrEqual(9);
  expect(left.length).toBeLessThanOrEqual(20);
  expect(kept.get('word 999')).toBe(999);
});
