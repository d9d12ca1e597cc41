// The Pipit's figures agree with each other: displacement, timing and its angle, gearing, chain.
import { expect, test } from 'vitest';
import { sweptVolume } from '../../src/calc/displacement.ts';
import { crankAngleAt } from '../../src/calc/piston-position.ts';
import { inUnit } from '../../src/quantity/quantity.ts';
import { millimetre } from '../../src/quantity/units.ts';
import { demo, settingInSi } from './read-folder.ts';

const { geometry, features } = demo.records.machine;

function millimetres(name: 'bore' | 'stroke' | 'rod' | 'chainPitch'): number {
  const written = geometry[name];
  if (written === undefined) throw new Error('no ' + name);
  return inUnit(written.quantity, millimetre);
}

test('two cylinders of 50 by 44.5 are 175 cc, and 178 after the rebore', () => {
  const cc = sweptVolume(millimetres('bore'), millimetres('stroke'), features.cylinders);
  expect(cc).toBeCloseTo(174.75, 2);
  expect(sweptVolume(50.5, millimetres('stroke'), features.cylinders)).toBeCloseTo(178.26, 2);
});

test('the timing in millimetres and its angle are one and the same, within the last digit of the book', () => {
  const depth = settingInSi('ignition-timing') * 1000;
  const angle = crankAngleAt(millimetres('stroke'), millimetres('rod'), depth);
  const book = (settingInSi('ignition-timing-angle') * 180) / Math.PI;
  expect(Math.abs(angle - book)).toBeLessThan(0.05);
});

test('top gear on its tyre is a small roadster', () => {
  const pairs = [geometry.primary, ...geometry.gears.slice(-1), geometry.final];
  const overall = pairs.reduce((ratio, pair) => ratio * ((pair?.driven ?? NaN) / (pair?.driving ?? NaN)), 1);
  const around = Math.PI * (17 * 25.4 + 2 * 3 * 25.4);
  const kilometresAnHour = ((6000 / overall) * around * 60) / 1e6;
  expect(kilometresAnHour).toBeGreaterThan(70);
  expect(kilometresAnHour).toBeLessThan(95);
});

test('each gear is faster than the one below it', () => {
  const ratios = geometry.gears.map((pair) => pair.driven / pair.driving);
  expect(ratios).toHaveLength(4);
  expect(ratios).toEqual([...ratios].sort((a, b) => b - a));
});

test('the links of the chain give a centre distance that a swinging arm can have', () => {
  const [front, rear] = [geometry.final?.driving ?? NaN, geometry.final?.driven ?? NaN];
  const straight = (geometry.chainLinks ?? NaN) - (front + rear) / 2;
  const bend = 8 * ((rear - front) / (2 * Math.PI)) ** 2;
  const centre = (millimetres('chainPitch') / 4) * (straight + Math.sqrt(straight ** 2 - bend));
  expect(centre).toBeGreaterThan(450);
  expect(centre).toBeLessThan(580);
});

test('twenty links of the book are twenty pitches', () => {
  const chain = demo.records.maker.limits.find((limit) => limit.id === 'chain-20-links');
  expect((chain?.standard?.low ?? NaN) * 1000).toBeCloseTo(20 * millimetres('chainPitch'), 6);
});
