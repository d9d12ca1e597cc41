// The small tables for cards: jets by altitude and temperature, oil for the can, and designations of threads.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { workOut } from '../../src/calc/work.ts';
import { jetTable } from '../../src/calc/mixture.ts';
import { canTable } from '../../src/calc/oil-in-fuel.ts';
import { readThread } from '../../src/calc/thread.ts';
import { likelySlip } from '../../src/calc/torque-slip.ts';

describe('cards', () => {
  test('jets shrink with height and warmth, and the jet that was proved stays at home', () => {
    const rows = jetTable({ number: 110, kind: 'bore', density: 1.199 }, [0, 1000, 2000, 3000], [0, 20, 35]);
    expect(rows[0]?.jets[1]).toBe(110);
    for (const { jets } of rows)
      expect(jets.every((jet, index) => index === 0 || jet <= (jets[index - 1] ?? 0))).toBe(true);
    const warm = rows.map((row) => row.jets[1] ?? 0);
    expect(warm.every((jet, index) => index === 0 || jet <= (warm[index - 1] ?? 0))).toBe(true);
    expect(warm.at(-1)).toBeLessThan(110);
  });

  test('the can table is what each line works out to', () => {
    const rows = canTable([20, 25], [1, 5]);
    expect(rows).toEqual([
      { ratio: 20, oil: [50, 250] },
      { ratio: 25, oil: [40, 200] },
    ]);
    expect(workOut('oil-in-fuel', { fuel: '5 l', ratio: '25:1' }).figures['oil']?.quantity).toBeCloseTo(200e-6, 12);
    expect(workOut('oil-in-fuel', { fuel: '5 l', ratio: '1:25' }).figures['oil']?.quantity).toBeCloseTo(200e-6, 12);
  });
});

describe('threads by name', () => {
  test.each([
    ['M8', 'M', 8, 1.25],
    ['M8x1.25', 'M', 8, 1.25],
    ['M 8 × 1', 'M', 8, 1],
    ['M10x1.25 LH', 'M', 10, 1.25],
    ['1/4 BSF', 'BSF', 6.35, 25.4 / 26],
    ['1/4 x 26 BSF', 'BSF', 6.35, 25.4 / 26],
    ['1/4" Whitworth', 'BSW', 6.35, 25.4 / 20],
    ['5/16 Cycle', 'BSC', 7.9375, 25.4 / 26],
    ['5/16 x 26 CEI', 'BSC', 7.9375, 25.4 / 26],
    ['1/4-28 UNF', 'UNF', 6.35, 25.4 / 28],
    ['1/4-28', 'UNF', 6.35, 25.4 / 28],
    ['#10-24 UNC', 'UNC', 0.19 * 25.4, 25.4 / 24],
  ])('%s', (text, series, diameter, pitch) => {
    const thread = readThread(text);
    expect(thread?.series).toBe(series);
    expect(thread?.diameter).toBeCloseTo(diameter, 6);
    expect(thread?.pitch).toBeCloseTo(pitch, 6);
  });

  test.each(['M', 'M8x9', '1/4', '1/4-20', '5 mm', '', 'BSF', '99/100 BSF'])('%s names no one thread', (text) =>
    expect(readThread(text)).toBeUndefined(),
  );

  test('no text makes it throw', () => {
    fc.assert(fc.property(fc.string(), (text) => void readThread(text)));
  });
});

describe('a slip of the unit', () => {
  test.each([
    [2.5, 24, /kgf·m read as N·m/],
    [18, 24.4, undefined],
    [235, 24, /N·m read as kgf·m|place/],
    [2, 24, /12/],
    [24, 24, undefined],
    [30, 24, undefined],
    [0.7, 24, undefined],
  ])('of %f where about %f is to be expected', (value, expected, says) => {
    const slip = likelySlip(value, expected);
    if (says === undefined) expect(slip).toBeUndefined();
    else expect(slip?.says).toMatch(says);
  });
});
