// Numbers and units as people write them, and what is said when they cannot be read.
import { describe, expect, test } from 'vitest';
import { printFigure, printRange, written } from '../../src/figure/print.ts';
import { formatMoney, inCurrency, readMoney, sum, totals } from '../../src/quantity/money-arithmetic.ts';
import type { Dimension, Read } from '../../src/quantity/quantity.ts';
import { readAnyQuantity, readQuantity } from '../../src/quantity/read-quantity.ts';
import { readRange } from '../../src/quantity/read-range.ts';

const at = { file: 'any', path: [] } as const;
const plain = (text: string): string => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ');

function why(read: Read<unknown>): string {
  return read.ok ? 'read' : [read.why.code, read.why.message, read.why.hint ?? ''].join(' | ');
}

describe('torque, in every spelling of the trade', () => {
  test.each([
    ['2.5 kgf·m', '2.5 kgf·m'],
    ['2.5 kgf.m', '2.5 kgf·m'],
    ['2.5 m-kg', '2.5 kgf·m'],
    ['2.5 kg-m', '2.5 kgf·m'],
    ['2.5 kgm', '2.5 kgf·m'],
    ['2.5 mkg', '2.5 kgf·m'],
    ['2.5 kg m', '2.5 kgf·m'],
    ['2.5 mkp', '2.5 kgf·m'],
    ['250 kg-cm', '250 kgf·cm'],
    ['250 cm-kg', '250 kgf·cm'],
    ['18 ft-lb', '18 lbf·ft'],
    ['18 ftlb', '18 lbf·ft'],
    ['18 lb ft', '18 lbf·ft'],
    ['18 lb-ft', '18 lbf·ft'],
    ['18 lbf ft', '18 lbf·ft'],
    ['18 ft. lbs.', '18 lbf·ft'],
    ['18 foot-pounds', '18 lbf·ft'],
    ['18 pounds feet', '18 lbf·ft'],
    ['18 lbs/ft', undefined],
    ['90 in-lb', '90 lbf·in'],
    ['90 lb in', '90 lbf·in'],
    ['90 inch-pounds', '90 lbf·in'],
    ['24,5 Nm', '24.5 N·m'],
    ['24.5 N-m', '24.5 N·m'],
    ['24.5NM', '24.5 N·m'],
    ['0.25 daNm', undefined],
    ['½ kgf·m', '0.5 kgf·m'],
    ['2 1/2 kgf·m', '2.5 kgf·m'],
  ])('%s', (text, printed) => {
    const read = readQuantity(text, 'torque');
    expect(read.ok ? plain(printFigure(written(read.value, at))) : undefined).toBe(printed);
  });
});

describe('what is refused names the reason and what to write', () => {
  test.each<[string, Dimension, RegExp]>([
    ['12,480 mi', 'distance ridden', /number-ambiguous.*12 480 \(thousands\).*12\.480 \(decimals\)/],
    ['12,480.5 mi', 'distance ridden', /number-unreadable.*commas for thousands.*12 480\.5/],
    ['1.234,5 mm', 'length', /number-unreadable.*points for thousands.*1 234\.5/],
    ['18 lbf/ft', 'torque', /“lbf·ft” is.*18 lbf·ft/],
    ['18 mn', 'torque', /read/],
    ['18 Nn', 'torque', /unit-unknown.*did you mean “18 N·m”/],
    ['18 mm', 'torque', /unit-wrong.*unit of length; a torque is wanted/],
    ['18', 'torque', /unit-missing/],
    ['9-11 N·m', 'torque', /number-unreadable.*range/],
    ['5 gal', 'volume', /imp gal or US gal/],
    ['48 mpg', 'fuel use', /mpg imp or mpg US/],
    ['6?.8 bar', 'gauge pressure', /number-unreadable/],
    ['1e3 mm', 'length', /number-unreadable/],
    ['1/0 mm', 'length', /divides by nought/],
    ['2 3/2 turns', 'turns', /more than a whole/],
    ['bar', 'gauge pressure', /does not begin with a number/],
    ['28 lb', 'gauge pressure', /“psi” is/],
  ])('%s as %s', (text, dimension, message) => expect(why(readQuantity(text, dimension))).toMatch(message));
});

describe('other quantities', () => {
  test.each([
    ['12 480 mi', '12 480 mi', 'distance ridden'],
    ['8 106 mi', '8106 mi', 'distance ridden'],
    ['8106 miles', '8106 mi', 'distance ridden'],
    ['0,35 mm', '0.35 mm', 'length'],
    ['14 thou', '14 thou', 'length'],
    ['1/2"', '0.5 in', 'length'],
    ['5 ft 6 in', '66 in', 'length'],
    ['25:1', '25:1', 'ratio'],
    ['1:25', '1:25', 'ratio'],
    ['7.0:1', '7.0:1', 'ratio'],
    ['2 1/2 turns', '2.5 turns', 'turns'],
    ['1 turn', '1 turn', 'turns'],
    ['3 h 20 min', '200 min', 'duration'],
    ['6 months', '6 months', 'calendar time'],
    ['−5 °C', '−5 °C', 'temperature'],
    ['10 uF', '10 µF', 'capacitance'],
    ['4.7 kohm', '4.7 kΩ', 'resistance'],
    ['1.5 kg/cm2', '1.5 kgf/cm²', 'gauge pressure'],
    ['28 lbs/sq in', '28 psi', 'gauge pressure'],
    ['5%', '5 %', 'share'],
    ['650 cc', '650 cc', 'volume'],
    ['2 1/2 imp pt', '2.5 imp pt', 'volume'],
    ['8 lbf/in', '8 lbf/in', 'stiffness'],
    ['23°', '23°', 'angle'],
    ['55 mph', '55 mph', 'speed'],
    ['1200 rpm', '1200 rpm', 'rotation speed'],
    ['0.50 mm', '0.50 mm', 'length'],
    ['+0.50 mm', '0.50 mm', 'length'],
  ])('%s', (text, printed, dimension) => {
    const read = readAnyQuantity(text);
    expect(read.ok ? [plain(printFigure(written(read.value, at))), read.value.unit.dimension] : why(read)).toEqual([
      printed,
      dimension,
    ]);
  });
});

describe('ranges', () => {
  test.each<[string, Dimension, string]>([
    ['9 to 11 N·m', 'torque', '9 to 11 N·m'],
    ['9–11 N·m', 'torque', '9 to 11 N·m'],
    ['9-11 N·m', 'torque', '9 to 11 N·m'],
    ['9 N·m to 11 N·m', 'torque', '9 to 11 N·m'],
    ['12 ± 2 N·m', 'torque', '10 to 14 N·m'],
    ['12 +/- 2 N·m', 'torque', '10 to 14 N·m'],
    ['20 ± 5 °C', 'temperature', '15 to 25 °C'],
    ['50 +0.02 -0.01 mm', 'length', '49.99 to 50.02 mm'],
    ['50.10 mm max', 'length', '50.10 mm max'],
    ['max 50.10 mm', 'length', '50.10 mm max'],
    ['2.0 mm min', 'length', '2.0 mm min'],
    ['2.0 mm or more', 'length', '2.0 mm min'],
    ['1 1/2 to 2 1/2 turns', 'turns', '1.5 to 2.5 turns'],
    ['20:1 to 25:1', 'ratio', '20:1 to 25:1'],
    ['40 to 50 mpg imp', 'fuel use', '40 to 50 mpg imp'],
    ['-5 to 5 °C', 'temperature', '−5 to 5 °C'],
    ['2.2 kgf·m', 'torque', '2.2 kgf·m'],
    ['2-1/2 turns', 'turns', '2.5 turns'],
    ['11/32 to 13/32 in', 'length', '11/32 to 13/32 in'],
    ['1 27/32 in', 'length', '1 27/32 in'],
    ['1/32 in max', 'length', '1/32 in max'],
    ['3/8 to 1/2 in', 'length', '3/8 to 1/2 in'],
  ])('%s', (text, dimension, printed) => {
    const read = readRange(text, dimension);
    expect(read.ok ? plain(printRange(read.value)) : why(read)).toBe(printed);
  });

  test('a range that runs backwards is refused', () =>
    expect(why(readRange('11 to 9 N·m', 'torque'))).toMatch(/larger to the smaller/));
  test('a bound of another kind is refused', () =>
    expect(why(readRange('50.10 kg max', 'length'))).toMatch(/unit-wrong/));
});

describe('money', () => {
  test.each([
    ['18.50 GBP', '18.50 GBP'],
    ['GBP 18.50', '18.50 GBP'],
    ['£18.50', '18.50 GBP'],
    ['18,50 EUR', '18.50 EUR'],
    ['1 250 JPY', '1250 JPY'],
    ['12 000 GBP', '12 000.00 GBP'],
  ])('%s', (text, printed) => {
    const read = readMoney(text);
    expect(read.ok ? plain(formatMoney(read.value)) : why(read)).toBe(printed);
  });

  test.each([
    ['$18', /several currencies/],
    ['1,250 GBP', /thousands/],
    ['12.5 JPY', /finer/],
    ['18', /currency/],
    ['-5 GBP', /less than nothing/],
    ['18.505 GBP', /finer/],
    ['5 XXX', /not a currency/],
  ])('%s is refused', (text, message) => expect(why(readMoney(text))).toMatch(message));

  test('sums keep to whole minor units and to one currency', () => {
    const pence = Array.from({ length: 1000 }, () => ({ minor: 10, currency: 'GBP' }));
    expect(sum(pence, 'GBP')).toEqual({ minor: 10_000, currency: 'GBP' });
    expect(() => sum([{ minor: 1, currency: 'EUR' }], 'GBP')).toThrow(RangeError);
    expect(
      totals([
        { minor: 1, currency: 'USD' },
        { minor: 2, currency: 'EUR' },
        { minor: 3, currency: 'USD' },
      ]),
    ).toEqual([
      { minor: 2, currency: 'EUR' },
      { minor: 4, currency: 'USD' },
    ]);
  });

  test('another currency is changed only at a stated rate', () => {
    expect(inCurrency({ minor: 1000, currency: 'USD' }, 'GBP', { USD: 0.79 })).toEqual({ minor: 790, currency: 'GBP' });
    expect(inCurrency({ minor: 1000, currency: 'JPY' }, 'GBP', { JPY: 0.0052 })).toEqual({
      minor: 520,
      currency: 'GBP',
    });
    expect(inCurrency({ minor: 1000, currency: 'USD' }, 'GBP', {})).toBeUndefined();
  });
});

test('what is proposed in place of an odd number ends with the unit that was written, and can be read as it stands', () => {
  const proposed = (text: string): readonly string[] => {
    const read = readQuantity(text, 'distance ridden');
    const hint = read.ok ? '' : (read.why.hint ?? '');
    return [...hint.matchAll(/“([^”]+)”/gu)].map(([, one = '']) => one);
  };
  expect(proposed('12,480 km')).toEqual(['12 480 km', '12.480 km']);
  expect(proposed('12,480mi')).toEqual(['12 480mi', '12.480mi']);
  expect(proposed('1,112,480 mi')).toEqual(['1 112 480 mi']);
  expect(proposed('1.112,5 km')).toEqual(['1 112.5 km']);
  for (const one of ['12,480 km', '12,480mi', '1,112,480 mi', '1.112,5 km'].flatMap(proposed))
    expect(readQuantity(one, 'distance ridden').ok, one).toBe(true);
  const money = readMoney('1,250 GBP');
  expect(money.ok ? '' : money.why.hint).toBe('write “1 250 GBP”');
  expect(readMoney('1 250 GBP').ok).toBe(true);
});
