// Line fit and spread of readings against an independent statistics library.
import fc from 'fast-check';
import { linearRegression, mean, sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { repeats } from '../../src/calc/limit-verdict.ts';
import { fitLine } from '../../src/calc/wear-projection.ts';

const reading = fc.double({ min: -1000, max: 1000, noNaN: true });

test('the line through readings is the library’s', () => {
  const points = fc
    .uniqueArray(fc.integer({ min: 0, max: 60_000 }), { minLength: 3, maxLength: 40 })
    .chain((places) => fc.tuple(...places.map((at) => reading.map((value) => ({ at, value })))));
  fc.assert(
    fc.property(points, (all) => {
      const line = fitLine(all);
      const theirs = linearRegression(all.map(({ at, value }) => [at, value]));
      expect(line.slope).toBeCloseTo(theirs.m, 6);
      expect(line.meanValue - line.slope * line.meanAt).toBeCloseTo(theirs.b, 3);
      const left = all.map(({ at, value }) => value - theirs.m * at - theirs.b);
      const scatter = Math.sqrt(left.reduce((sum, one) => sum + one ** 2, 0) / (all.length - 2));
      expect(line.scatter).toBeCloseTo(scatter, 4);
    }),
  );
});

test('repeated readings are averaged with the library’s spread of the mean, twice', () => {
  fc.assert(
    fc.property(fc.array(reading, { minLength: 2, maxLength: 30 }), (values) => {
      const found = repeats(values);
      expect(found.mean).toBeCloseTo(mean(values), 8);
      expect(found.expanded).toBeCloseTo((2 * sampleStandardDeviation(values)) / Math.sqrt(values.length), 6);
    }),
  );
});
