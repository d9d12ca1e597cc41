// Quantities there and back: what is written is read, what is printed reads back, every spelling finds its unit.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printFigure, printRange, written } from '../../src/figure/print.ts';
import { formatDecimal, roundedText } from '../../src/quantity/decimal.ts';
import { inUnit, of } from '../../src/quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../../src/quantity/read-quantity.ts';
import { readNumber } from '../../src/quantity/read-number.ts';
import { readRange } from '../../src/quantity/read-range.ts';
import { unitOf } from '../../src/quantity/unit-spelling.ts';
import { dimensions, units } from '../../src/quantity/units.ts';

const at = { file: 'any', path: [] } as const;
const everyUnit = dimensions.flatMap((dimension) => units[dimension].map((unit) => ({ dimension, unit })));
const anyUnit = fc.constantFrom(...everyUnit);
const decimalText = fc
  .tuple(fc.integer({ min: 0, max: 99_999_999 }), fc.integer({ min: 0, max: 4 }))
  .map(([digits, decimals]) => ({ value: digits / 10 ** decimals, decimals }));

describe('units', () => {
  test('there are units of every dimension, and symbols are unique within one', () => {
    expect(everyUnit.length).toBeGreaterThan(100);
    for (const dimension of dimensions) {
      const symbols = units[dimension].map((unit) => unit.symbol);
      expect(symbols.length, dimension).toBeGreaterThan(0);
      expect(new Set(symbols).size, dimension).toBe(symbols.length);
    }
  });

  test('every symbol and spelling finds its own unit in its dimension', () => {
    for (const { dimension, unit } of everyUnit) {
      for (const spelling of [unit.symbol, ...unit.spellings])
        expect(unitOf(spelling, dimension), dimension + ' ' + spelling).toBe(unit);
    }
  });

  test('out of a unit is the way back into it', () => {
    fc.assert(
      fc.property(anyUnit, fc.double({ min: 1e-3, max: 1e6, noNaN: true }), ({ unit }, value) => {
        const back = inUnit(of(value, unit), unit);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, value, Math.abs(unit.offset ?? 0)));
      }),
    );
  });
});

describe('written values', () => {
  test('a value printed reads back with the same quantity, unit and decimals', () => {
    fc.assert(
      fc.property(anyUnit, decimalText, ({ dimension, unit }, { value, decimals }) => {
        if (unit.inverse === true && value === 0) return;
        if (dimension === 'ratio' && value <= 1) return;
        const printed = printFigure(written({ quantity: of(value, unit), unit, decimals, text: '' }, at));
        const read = readQuantity(printed, dimension);
        expect(read.ok, printed).toBe(true);
        if (!read.ok) return;
        expect(read.value.unit.symbol).toBe(unit.symbol);
        expect(read.value.decimals).toBe(decimals);
        expect(read.value.quantity).toBeCloseTo(of(value, unit), 9);
      }),
      { numRuns: 500 },
    );
  });

  test('a range printed reads back with the same bounds', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...everyUnit.filter(({ unit }) => unit.inverse !== true)),
        decimalText,
        decimalText,
        ({ dimension, unit }, a, b) => {
          const [low, high] = a.value <= b.value ? [a, b] : [b, a];
          if (dimension === 'ratio' && low.value <= 1) return;
          const decimals = Math.max(a.decimals, b.decimals);
          const printed = printRange({
            low: of(low.value, unit),
            high: of(high.value, unit),
            unit,
            decimals,
            text: '',
          });
          const read = readRange(printed, dimension);
          expect(read.ok, printed).toBe(true);
          if (!read.ok) return;
          expect(read.value.low).toBeCloseTo(of(low.value, unit), 9);
          expect(read.value.high).toBeCloseTo(of(high.value, unit), 9);
        },
      ),
    );
  });

  test('no text makes a reader throw', () => {
    const pieces = fc.constantFrom(
      '1',
      '12,480',
      '.',
      '/',
      '½',
      ' ',
      ':',
      '–',
      '±',
      'to',
      'mm',
      'N·m',
      'max',
      '-',
      '\u202f',
      '"',
      '?',
      '\u0000',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(pieces, { maxLength: 8 }).map((list) => list.join('')),
        ),
        (text) => {
          for (const read of [readAnyQuantity(text), readQuantity(text, 'torque'), readRange(text, 'length')]) {
            if (read.ok) expect(Number.isNaN(read.value.unit.factor)).toBe(false);
            else expect(read.why.message.length).toBeGreaterThan(0);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });
});

/** Half away from zero by whole numbers only: the independent way. */
function roundedByDigits(digits: bigint, from: number, to: number): string {
  const up =
    to >= from
      ? digits * 10n ** BigInt(to - from)
      : (digits + 5n * 10n ** BigInt(from - to - 1)) / 10n ** BigInt(from - to);
  const text = up.toString().padStart(to + 1, '0');
  return to === 0 ? text : text.slice(0, -to) + '.' + text.slice(-to);
}

describe('the decimal rounder', () => {
  test('agrees with rounding in whole numbers', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: 10n ** 13n }),
        fc.integer({ min: 0, max: 8 }),
        fc.integer({ min: 0, max: 8 }),
        (digits, from, to) => {
          expect(roundedText(Number(digits) / 10 ** from, to)).toBe(roundedByDigits(digits, from, to));
        },
      ),
      { numRuns: 1000 },
    );
  });

  test('prints what went through another unit as it was written', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: 10n ** 12n }),
        fc.integer({ min: 0, max: 6 }),
        fc.constantFrom(1e-3, 0.0254, 0.3048, 1609.344, 60, 1e5, 9.80665),
        (digits, places, factor) => {
          const through = ((Number(digits) / 10 ** places) * factor) / factor;
          expect(roundedText(through, places)).toBe(roundedByDigits(digits, places, places));
        },
      ),
      { numRuns: 1000 },
    );
  });

  test.each([
    [2.675, 2, '2.68'],
    [1.005, 2, '1.01'],
    [-2.5, 0, '−3'],
    [-0.04, 1, '0.0'],
    [8106, 0, '8106'],
    [12480, 0, '12\u202f480'],
    [1234567.891, 2, '1\u202f234\u202f567.89'],
    [9.9999, 2, '10.00'],
    [1e-9, 3, '0.000'],
    [1.5e21, 0, '1\u202f500\u202f000\u202f000\u202f000\u202f000\u202f000\u202f000'],
  ])('%f with %i decimals is %s', (value, decimals, text) => expect(formatDecimal(value, decimals)).toBe(text));

  test('a printed number reads back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        fc.integer({ min: 0, max: 6 }),
        (value, decimals) => {
          const read = readNumber(formatDecimal(value, decimals));
          expect(read.ok).toBe(true);
          if (read.ok) expect(Math.abs(read.value.value - value)).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals);
        },
      ),
    );
  });

  test('a number that is none is a bug', () => {
    expect(() => formatDecimal(Number.NaN, 1)).toThrow(RangeError);
    expect(() => formatDecimal(Infinity, 1)).toThrow(RangeError);
  });
});
