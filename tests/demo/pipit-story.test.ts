// The Pipit's story holds together in time and money: days, clocks, rides, tyres, sums.
import { expect, test } from 'vitest';
import { compareDays, daysBetween, readDay } from '../../src/quantity/day-arithmetic.ts';
import { demo, found } from './read-folder.ts';

const { machine, jobs } = demo.records;
const byDay = [...jobs].sort((a, b) => compareDays(a.date.from, b.date.from) || (a.id < b.id ? -1 : 1));
const told = readDay('2026-11-14');
if (!told.ok) throw new Error('the demo’s day');
const today = told.value;

test('thirty months, thirty records and more', () => {
  const [first, last] = [byDay[0], byDay[byDay.length - 1]];
  expect(byDay.length).toBeGreaterThanOrEqual(30);
  expect(daysBetween(first?.date.from ?? today, last?.date.from ?? today)).toBeGreaterThan(900);
});

test('the name of a record begins with its day', () => {
  expect(jobs.filter((job) => !job.id.startsWith(String(job.date.from))).map((job) => job.id)).toEqual([]);
});

test('what is planned lies ahead of the day of the demo, and nothing else does', () => {
  const ahead = jobs.filter((job) => compareDays(job.date.from, today) > 0).map((job) => job.id);
  expect(ahead).toEqual(jobs.filter((job) => job.state === 'planned').map((job) => job.id));
  expect(ahead).toHaveLength(2);
});

test('half a year put aside, with the state it was left in', () => {
  const aside = found(byDay, (job) => job.state === 'put aside', 'job put aside');
  const next = found(byDay, (job) => compareDays(job.date.from, aside.date.from) > 0, 'job after it');
  expect(daysBetween(aside.date.from, next.date.from)).toBeGreaterThan(180);
  expect(aside.stateLeft.length).toBeGreaterThanOrEqual(3);
});

test('each ride goes out where the machine stood, and the clock never goes back but at its change', () => {
  const rides = byDay.flatMap((job) => (job.ride?.out === undefined ? [] : [{ id: job.id, ...job.ride }]));
  const breaks = rides.flatMap((ride, n) => {
    const before = rides[n - 1]?.in?.quantity;
    return before === undefined || before === ride.out?.quantity ? [] : [ride.id];
  });
  expect(breaks).toEqual(['2026-03-28-first-ride-of-the-year']);
  expect(rides.filter((ride) => (ride.in?.quantity ?? NaN) <= (ride.out?.quantity ?? NaN))).toEqual([]);
});

test('the clocks begin and end where the rides do', () => {
  const [first, second] = machine.clock;
  const rides = byDay.flatMap((job) => job.ride ?? []);
  expect(rides.some((ride) => ride.in?.quantity === first?.to?.reads?.quantity)).toBe(true);
  expect(rides.some((ride) => ride.out?.quantity === second?.from.reads?.quantity)).toBe(true);
});

test('an odometer written beside a ride is the ride’s end', () => {
  const apart = byDay.filter((job) => job.ride?.in !== undefined && job.odometer?.quantity !== job.ride.in.quantity);
  expect(apart.map((job) => job.id)).toEqual([]);
});

test('tyres were made before they were fitted, and not years before', () => {
  const fitted = found(jobs, (job) => job.id.endsWith('wheels-brakes-tyres'), 'job with tyres');
  const codes = fitted.readings
    .filter((reading) => reading.item.endsWith('date code'))
    .flatMap((reading) => reading.left.map((one) => (one.value.kind === 'words' ? one.value.text : '')));
  expect(codes).toHaveLength(2);
  for (const code of codes) {
    const [, week = '', year = ''] = /(\d\d)(\d\d)$/.exec(code) ?? [];
    expect(Number(week)).toBeLessThanOrEqual(53);
    const made = new Date(Date.UTC(2000 + Number(year), 0, 1 + (Number(week) - 1) * 7)).toISOString().slice(0, 10);
    const day = readDay(made);
    if (!day.ok) throw new Error(made);
    const age = daysBetween(day.value, fitted.date.from);
    expect(age).toBeGreaterThan(0);
    expect(age).toBeLessThan(365);
  }
});

test('money is in pounds with some euros that have a rate, and the limit is kept', () => {
  const paid = jobs.flatMap((job) => [
    ...job.money.map((entry) => entry.amount),
    ...job.parts.flatMap((part) => part.price ?? []),
  ]);
  expect(new Set(paid.map((amount) => amount.currency))).toEqual(new Set(['GBP', 'EUR']));
  const pounds = paid.map((amount) => amount.minor * (amount.currency === 'EUR' ? (machine.rates['EUR'] ?? NaN) : 1));
  const total = pounds.reduce((sum, each) => sum + each, 0);
  expect(total).toBeGreaterThan(0.6 * (machine.spendingLimit?.minor ?? NaN));
  expect(total).toBeLessThan(machine.spendingLimit?.minor ?? NaN);
});
