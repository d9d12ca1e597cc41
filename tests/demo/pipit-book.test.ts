// What follows from the Pipit's records on the day of the demo is what its story says.
import { describe, expect, test } from 'vitest';
import { asFound, leftOnBench, likelyPlaces } from '../../src/book/left-over.ts';
import { makeBook } from '../../src/book/make.ts';
import { isTooClose } from '../../src/book/verdict.ts';
import { readDay } from '../../src/quantity/day-arithmetic.ts';
import { inUnit } from '../../src/quantity/quantity.ts';
import { mile } from '../../src/quantity/units.ts';
import { demo, found } from './read-folder.ts';

const day = readDay('2026-11-14');
if (!day.ok) throw new Error('the demo’s day');
const book = makeBook(demo.records, demo.content, day.value);

test('the distance of the machine is counted over both clocks', () => {
  const { clock, machine } = book.odometer.now;
  expect(clock === undefined ? undefined : Math.round(inUnit(clock.quantity, mile))).toBe(24_466);
  expect(machine === undefined ? undefined : Math.round(inUnit(machine.quantity, mile))).toBe(8214 + 24_466 - 23_418);
  expect(book.odometer.statement.word).toBe('not actual');
});

test('one thing is still off, in the bag that was never emptied, and one is with a firm', () => {
  expect(book.off.open.map((line) => [line.entry.thing, line.state, line.entry.bag ?? line.entry.to])).toEqual([
    ['left side panel', 'off', '8'],
    ['first speedometer', 'sent out', 'the clock mender'],
  ]);
  expect(book.off.bags.filter((bag) => !bag.emptied).map((bag) => bag.bag)).toEqual(['8']);
});

test('the stud with its insert is marked, and keeps the book’s figure', () => {
  const row = found(book.torque, (one) => one.fastener.id === 'cylinder-head-nut', 'head nuts');
  expect(row.basis).toBe('maker');
  expect(row.changed?.now).toContain('wire thread insert');
  expect(row.changed?.by.id).toBe('2025-05-03-stud-insert');
});

test('a band is worked out only where the owner wrote cover, bracket or trim, and elsewhere the blank stays', () => {
  const computed = book.torque.filter((row) => row.basis === 'computed').map((row) => row.fastener.duty);
  expect(computed.length).toBeGreaterThanOrEqual(7);
  expect(new Set(computed)).toEqual(new Set(['cover', 'bracket', 'trim']));
  const blank = book.torque.filter((row) => row.basis === 'none').map((row) => row.fastener.id);
  expect(blank.length).toBeGreaterThanOrEqual(5);
});

describe('series', () => {
  const series = (item: string): (typeof book.series)[number] => found(book.series, (one) => one.item === item, item);

  test('the wrong blade is struck and the right one stands', () => {
    const struck = series('points-gap').points.filter((point) => point.corrected !== undefined);
    expect(struck.map((point) => [point.job.id, point.position])).toEqual([
      ['2024-06-08-points-and-timing', 'left'],
      ['2024-06-08-points-and-timing', 'right'],
    ]);
  });

  test('the left bore was past its limit, and begins again at its oversize', () => {
    const bore = series('bore').points;
    const worn = bore.filter((point) => point.verdict === 'past the limit' || isTooClose(point.verdict));
    expect(worn.map((point) => point.position)).toContain('left top fore-aft');
    expect(worn.filter((point) => point.position.startsWith('right'))).toEqual([]);
    const now = bore.filter((point) => point.job.id === '2025-03-12-barrels-back').map((point) => point.verdict);
    expect(now).toHaveLength(12);
    expect(new Set(now).has('past the limit')).toBe(false);
  });
});

test('the holds that are left are those of the story, and what months have run out', () => {
  const open = book.holds.flatMap((hold) =>
    hold.checks
      .filter((check) => check.state === 'not proved' || check.state === 'undone')
      .map((check) => hold.point.id + ': ' + check.check.id),
  );
  expect(open.filter((line) => !line.startsWith('before-handing-over'))).toEqual([
    'before-live-kick: battery-rested',
    'before-moving: tyres-hold',
    'before-moving: nothing-left-off',
    'before-road: lamps-and-horn',
  ]);
});

test('some services are overdue by their months although the miles are few', () => {
  const overdue = book.due.filter((line) => line.state === 'overdue').map((line) => line.service.id);
  expect(overdue).toContain('plugs-renew');
  expect(overdue).toContain('battery-care');
  expect(overdue.length).toBeLessThanOrEqual(8);
});

test('a person is asked to look at few things, and each is meant', () => {
  expect([...new Set(book.queries.map((query) => query.code))].sort()).toEqual([
    'changed-after-signing',
    'ridden-while-held',
  ]);
  expect(book.answered?.map(({ query, answer }) => [query.code, answer.by])).toEqual([
    ['ridden-with-thing-open', 'owner'],
  ]);
});

test('the planned job has its blanks, its procedure and the next free bag', () => {
  const plan = found(book.plans, (one) => one.job.state === 'planned', 'plan');
  expect(plan.procedures.map((procedure) => procedure.id)).toEqual(['top-end-strip-two-stroke']);
  expect(plan.blanks.length).toBeGreaterThanOrEqual(24);
  expect(plan.bagFrom).toBe(19);
});

test('what it cost is less than what may be spent, pistons in euros included', () => {
  expect(book.costs.leftOut).toEqual([expect.stringContaining('returned')]);
  expect(book.costs.total.currency).toBe('GBP');
  expect(book.costs.total.minor).toBeLessThan(book.costs.limit?.minor ?? 0);
  expect(book.costs.byYear.map((year) => year.year)).toEqual(['2024', '2025', '2026']);
});

test('it shows a tin that was lost, a check released by hand, a check of its own, and screws left over', () => {
  const lost = book.off.closed.filter((line) => line.entry.verb === 'lost');
  expect(lost.map((line) => [line.entry.thing, line.entry.fromBag, line.byJob.id])).toEqual([
    ['chain-guard-screw', 'small tin', '2025-05-24-chain-and-sprockets'],
  ]);
  const road = found(book.holds, (hold) => hold.point.id === 'before-road', 'road');
  const state = (id: string) => found(road.checks, (one) => one.check.id === id, id);
  expect(state('lamps-and-horn').released?.release.until).toBe('2027-03-31');
  expect(road.clear).toBe(false);
  expect(state('insert-looked-at')).toMatchObject({ state: 'proved', by: { day: '2026-09-19' } });
  const places = leftOnBench(book)?.things.map((thing) => likelyPlaces(book, asFound(thing))[0]?.fastener.id);
  expect(places).toEqual(['generator-cover-screw', 'cylinder-base-nut']);
});
