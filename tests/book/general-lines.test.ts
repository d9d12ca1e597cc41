// The general schedules fill in only what the machine has, and what its book does not speak of.
import { expect, test } from 'vitest';
import { evening, machineFile } from '../evenings/evening.ts';

const four = { stroke: 'four', lubrication: 'wet sump' };

function items(features: Readonly<Record<string, string>>, services = ''): readonly string[] {
  const maker = `splitpin: 1\nsource: {title: Workshop book, edition: 1974, page: 12}\nservices: [${services}]`;
  const made = evening('2026-05-01', {}, { machine: machineFile({}, { ...four, ...features }), maker });
  return made.book.due.map(({ service }) => service.item);
}

test('no fluid and no hose on drums, no points where a box times the spark, no spokes on cast wheels', () => {
  expect(items({}).filter((item) => /disc|battery/iu.test(item))).toEqual([]);
  expect(items({})).toEqual(expect.arrayContaining(['Spokes', 'Contact breaker, gap, timing, wick oil', 'Chain']));
  const other = items({ 'front brake': 'disc', trigger: 'electronic', wheels: 'cast', battery: 'yes', volts: '6 V' });
  expect(other).toEqual(
    expect.arrayContaining(['Brake hose (disc)', 'Brake fluid (disc)', 'Wheel bearings, brake cams']),
  );
  expect(other.filter((item) => /spokes|breaker/iu.test(item))).toEqual([]);
});

test('a look at many things stays where one of them is not fitted', () => {
  expect(items({ 'final drive': 'shaft' })).toContain('Before each ride: oil, tyres, brakes, lamps, chain, controls');
  expect(items({ 'final drive': 'shaft' })).not.toContain('Chain');
});

test('a book that speaks of the fuel hose has not spoken of the one of the brake', () => {
  const fuel = '{id: fuel-hose-new, item: Fuel hose, do: renew, every: 48 months}';
  const disc = items({ 'front brake': 'disc' }, fuel);
  expect(disc.filter((item) => item === 'Fuel hose')).toHaveLength(1);
  expect(disc).toContain('Brake hose (disc)');
});
