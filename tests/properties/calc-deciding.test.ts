// Deciding against a limit, and projecting wear to it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { instrumentUncertainty, judge, judgeSetting, repeats } from '../../src/calc/limit-verdict.ts';
import { fitLine, projectWear } from '../../src/calc/wear-projection.ts';
import { of } from '../../src/quantity/quantity.ts';
import type { WrittenRange } from '../../src/quantity/quantity.ts';
import { readRange } from '../../src/quantity/read-range.ts';
import { millimetre } from '../../src/quantity/units.ts';

function range(text: string): WrittenRange<'length'> {
  const read = readRange(text, 'length');
  if (!read.ok) throw new Error(read.why.message);
  return read.value;
}

const bore = [range('50.00 to 50.02 mm'), range('50.10 mm max')] as const;
const disc = [range('4.0 mm'), range('3.5 mm min')] as const;
const verdict = (
  value: number,
  uncertainty: number,
  [standard, limit]: readonly [WrittenRange<'length'>, WrittenRange<'length'>],
): string => judge<'length'>(of(value, millimetre), of(uncertainty, millimetre), standard, limit, millimetre).verdict;

describe('a verdict', () => {
  test.each([
    [50.01, 0, 'within standard'],
    [50.02, 0, 'within standard'],
    [50.05, 0, 'worn, usable'],
    [50.1, 0, 'worn, usable'],
    [50.11, 0, 'past the limit'],
    [50.095, 0.01, 'too close to call'],
    [50.105, 0.01, 'too close to call'],
    [50.115, 0.01, 'past the limit'],
    [50.08, 0.01, 'worn, usable'],
    // As far from the limit as the instrument may be out: both sides are decided there (ISO 14253-1).
    [50.09, 0.01, 'worn, usable'],
    [50.11, 0.01, 'past the limit'],
    [49.9, 0, 'better than new'],
  ])('of a bore of %f mm, known to %f', (value, uncertainty, expected) =>
    expect(verdict(value, uncertainty, bore)).toBe(expected),
  );

  test.each([
    [4.0, 'within standard'],
    [3.8, 'worn, usable'],
    [3.5, 'worn, usable'],
    [3.4, 'past the limit'],
  ])('of a disc of %f mm, where the limit is a least value', (value, expected) =>
    expect(verdict(value, 0, disc)).toBe(expected),
  );

  test('is none where the book gives no limit and the reading is outside its standard', () => {
    const alone = (value: number): string =>
      judge<'length'>(of(value, millimetre), undefined, bore[0], undefined, millimetre).verdict;
    expect([alone(50.01), alone(50.05), alone(49.9)]).toEqual(['within standard', 'no limit known', 'no limit known']);
    expect(judge<'length'>(of(5, millimetre), undefined, undefined, undefined, millimetre).verdict).toBe(
      'no limit known',
    );
  });

  test('calls better than new what the instrument cannot explain', () => {
    expect([49.985, 49.975].map((value) => verdict(value, 0.01, bore))).toEqual(['worn, usable', 'better than new']);
  });

  test('of a setting is within up to its ends, and past beyond the uncertainty', () => {
    const gap = range('0.30 to 0.40 mm');
    const said = (value: number): string =>
      judgeSetting<'length'>(of(value, millimetre), of(0.03, millimetre), gap, millimetre).verdict;
    expect([0.3, 0.39, 0.42, 0.44].map(said)).toEqual([
      'within standard',
      'within standard',
      'too close to call',
      'past the limit',
    ]);
  });

  test('never turns from past to inside as a value wears on', () => {
    const order = ['within standard', 'worn, usable', 'too close to call', 'past the limit'];
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 50.3, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        fc.double({ min: 0, max: 0.03, noNaN: true }),
        (value, more, uncertainty) => {
          expect(order.indexOf(verdict(value + more, uncertainty, bore))).toBeGreaterThanOrEqual(
            order.indexOf(verdict(value, uncertainty, bore)),
          );
        },
      ),
    );
  });

  test('a worse instrument proves less', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50.03, max: 50.2, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        (value, uncertainty) => {
          const [sharp, blunt] = [verdict(value, uncertainty, bore), verdict(value, uncertainty * 2, bore)];
          expect([sharp, 'too close to call']).toContain(blunt);
        },
      ),
    );
  });
});

describe('uncertainty', () => {
  test('of repeats falls with their number', () => {
    expect(repeats([1, 3]).expanded).toBeCloseTo(2, 12);
    expect(repeats([1, 3, 1, 3, 1, 3, 1, 3]).expanded).toBeLessThan(repeats([1, 3, 1, 3]).expanded);
    expect(repeats([5]).expanded).toBe(0);
  });
  test('of an instrument joins resolution, accuracy and spread', () => {
    expect(instrumentUncertainty(0.01, 0)).toBeCloseTo(0.01 / Math.sqrt(3), 12);
    expect(instrumentUncertainty(0, 0.03)).toBeCloseTo((2 * 0.03) / Math.sqrt(3), 12);
    expect(instrumentUncertainty(0.01, 0.03, 0.02)).toBeGreaterThan(instrumentUncertainty(0.01, 0.03));
  });
});

/** NIST StRD "Norris" would be a file; this is the textbook set of Anscombe, whose line is y = 3.00 + 0.500 x (Anscombe 1973). */
const anscombe = [
  [10, 8.04],
  [8, 6.95],
  [13, 7.58],
  [9, 8.81],
  [11, 8.33],
  [14, 9.96],
  [6, 7.24],
  [4, 4.26],
  [12, 10.84],
  [7, 4.82],
  [5, 5.68],
] as const;

describe('wear to the limit', () => {
  test('the line is the one that is published', () => {
    const line = fitLine(anscombe.map(([at, value]) => ({ at, value })));
    expect(line.slope).toBeCloseTo(0.5, 3);
    expect(line.meanValue - line.slope * line.meanAt).toBeCloseTo(3.0, 2);
    expect(line.scatter).toBeCloseTo(1.237, 3);
  });

  test('readings on a line reach the limit where the line does', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1e-4, noNaN: true }), fc.integer({ min: 3, max: 8 }), (slope, count) => {
        const points = Array.from({ length: count }, (_, index) => ({
          at: index * 1000,
          value: 50 + slope * index * 1000,
        }));
        const limit = 50 + slope * count * 2000;
        const found = projectWear(points, limit, 1);
        expect(found.kind).toBe('span');
        if (found.kind === 'span') expect(Math.abs(found.middle - count * 2000)).toBeLessThan(1);
      }),
    );
  });

  test('scatter widens the span, and it always holds the middle', () => {
    const points = [0, 1000, 2000, 3000].map((at, index) => ({
      at,
      value: 50 + at * 1e-5 + (index % 2 === 0 ? 0.002 : -0.002),
    }));
    const sharp = projectWear(points, 50.1, 1);
    const blunt = projectWear(points, 50.1, 1, 0.005);
    if (sharp.kind !== 'span' || blunt.kind !== 'span') throw new Error('no span');
    expect(sharp.earliest).toBeLessThanOrEqual(sharp.middle);
    expect(sharp.latest ?? Infinity).toBeGreaterThanOrEqual(sharp.middle);
    expect((blunt.latest ?? Infinity) - blunt.earliest).toBeGreaterThan((sharp.latest ?? 0) - sharp.earliest);
  });

  test('too few readings, no wear, or a limit reached are said', () => {
    expect(projectWear([], 50.1, 1)).toMatchObject({ kind: 'measure again', at: undefined });
    expect(
      projectWear(
        [
          { at: 0, value: 50 },
          { at: 1000, value: 50.01 },
        ],
        50.1,
        1,
      ),
    ).toMatchObject({ kind: 'measure again', at: 1500 });
    expect(
      projectWear(
        [
          { at: 0, value: 50 },
          { at: 1000, value: 50.01 },
        ],
        50.1,
        1,
        0,
        true,
      ).kind,
    ).toBe('span');
    expect(
      projectWear(
        [0, 1, 2].map((at) => ({ at, value: 50 })),
        50.1,
        1,
      ).kind,
    ).toBe('measure again');
    expect(projectWear([{ at: 0, value: 50.2 }], 50.1, 1).kind).toBe('past');
    expect(projectWear([{ at: 0, value: 3.4 }], 3.5, -1).kind).toBe('past');
  });
});
